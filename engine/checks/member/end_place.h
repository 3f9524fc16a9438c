#pragma once
// One place where a member is held, as its checks read it: the held end, the wood it is fastened to, and the forces of
// every state there.
#include "checks/registry.h"
#include "demand/worst.h"
#include "model/member.h"

#include <cstddef>
#include <string>
#include <vector>

namespace toehold::checks {

/// The wood a member's end is fastened to. in; depth and width of all pieces together.
struct HolderWood {
    double width_in = 0.0, depth_in = 0.0;
    double specific_gravity = 0.0;
    double modulus_psi = 0.0;
    /// Set where the file does not describe that wood (a ledger's or a beam's): what it is taken as.
    std::string assumption;
};

struct EndPlace {
    std::size_t index = 0;  ///< among the demand's holds
    const demand::Hold* hold = nullptr;
    model::Member member;
    const catalog::MemberMaterial* wood = nullptr;  ///< of the held member
    HolderWood holder;
    bool on_beam = false;  ///< the member lies on it: pressed down, it bears, whatever the connection
};

/// Below these, lb and lb in, nothing needs a path; they are far below any load and above the solver's noise.
inline constexpr double no_force_lb = 0.1;
inline constexpr double no_couple_lb_in = 1.0;

/// In order of the demand's holds; none where there is no framing demand or it has no state.
[[nodiscard]] std::vector<EndPlace> end_places(const CheckInput& input);
[[nodiscard]] const demand::HoldForces& forces_at(const CheckInput& input, const EndPlace& place, std::size_t state);

/// The state in which `quantity(const demand::HoldForces&)` is largest; the first of equal ones.
template <class Quantity>
[[nodiscard]] demand::Worst worst_at(const CheckInput& input, const EndPlace& place, Quantity&& quantity) {
    demand::Worst worst{quantity(forces_at(input, place, 0)), 0};
    for (std::size_t state = 1; state < input.demand.framing->states.size(); ++state) {
        const double value = quantity(forces_at(input, place, state));
        if (value > worst.value) worst = {value, state};
    }
    return worst;
}

/// Subject, link and the governing state's direction set. `by` names what joins the two.
[[nodiscard]] CheckResult end_result(const CheckInput& input, const EndPlace& place, std::size_t state, std::string by);
/// The forces of one state there, as steps.
[[nodiscard]] std::vector<Step> force_steps(const demand::HoldForces& forces);
/// No path, whatever the size of the demand: nothing resists it.
void nothing_resists(CheckResult& result, double demand, std::string unit, std::string why);

}  // namespace toehold::checks
