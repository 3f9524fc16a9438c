#pragma once
// A place where a member is held, and what the connection there resists, whatever its kind: the held end, the wood it
// is fastened to, the forces of every state there; and how those forces use the connection.
#include "checks/basis/result_parts.h"
#include "checks/connection/uses.h"
#include "checks/registry.h"
#include "demand/governing_state.h"
#include "model/member.h"

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

namespace toehold::catalog {
struct MemberMaterial;
}

namespace toehold::checks {

/// The wood a member's end is fastened to. in; depth and width of all pieces together.
struct HolderWood {
    double width_in = 0.0, depth_in = 0.0;
    double specific_gravity = 0.0;
    double modulus_psi = 0.0;
    /// Set where the file does not describe that wood (a ledger's or a beam's): what it is taken as.
    format::Phrase assumption;
};

struct EndPlace {
    std::size_t index = 0;  ///< among the demand's member supports
    const demand::MemberSupport* support = nullptr;
    model::Member member;
    model::PartId part;        ///< the held member at what holds it, or its end that nothing holds
    model::PartId held_by;     ///< a member, a ledger or a beam; a joist not described where there is nothing
    bool unsupported = false;  ///< nothing is described there
    const catalog::MemberMaterial* wood = nullptr;  ///< of the held member
    HolderWood holder;
    bool on_beam = false;  ///< the member lies on it: pressed down, it bears, whatever the connection
};

/// In order of the demand's member supports; none where there is no framing demand or it has no state.
[[nodiscard]] std::vector<EndPlace> end_places(const CheckInput& input);
/// What the members put on one place in every state.
class PlaceForces {
  public:
    PlaceForces(const CheckInput& input, const EndPlace& place);
    [[nodiscard]] std::size_t states() const { return framing_.states.size(); }
    /// An uplift less what the least of the deck's load holds down there; `down_lb` with all of that load.
    [[nodiscard]] demand::SupportReaction in(std::size_t state) const;

  private:
    const demand::FramingDemand& framing_;
    std::size_t place_;
    double holds_down_lb_ = 0.0, most_down_lb_ = 0.0;  ///< the deck's
};
[[nodiscard]] demand::SupportReaction forces_at(const CheckInput& input, const EndPlace& place, std::size_t state);

/// The state in which `quantity(const demand::SupportReaction&)` is largest; the first of equal ones.
template <class Value>
[[nodiscard]] demand::GoverningState governing_at(const CheckInput& input, const EndPlace& place, Value&& quantity) {
    const PlaceForces forces(input, place);
    return demand::governing_among(forces.states(), [&](std::size_t state) { return quantity(forces.in(state)); });
}

/// Part, link and the governing state's direction set. `by` names what joins the two.
[[nodiscard]] CheckResult end_result(const CheckInput& input, const EndPlace& place, std::size_t state,
                                     format::Phrase by);
/// What the connection carries upright, up or down, whichever is more; down with the deck's load.
[[nodiscard]] double upright_lb(const demand::SupportReaction& forces);
/// The forces of one state there, as steps.
[[nodiscard]] std::vector<Step> force_steps(const demand::SupportReaction& forces);

struct EndStrength {
    format::Phrase by;        ///< what joins the two, for the link
    std::string clause;       ///< empty: the check's own
    std::vector<Step> steps;  ///< from the connection's dimensions to its values
    format::Phrase missing;   ///< evidence the file does not give; empty: nothing
    format::Phrase note;
    std::function<void(const demand::SupportReaction&, Uses&)> uses;  ///< adds each
};

/// All uses of these forces together.
[[nodiscard]] double together(const EndStrength& strength, const demand::SupportReaction& forces);
[[nodiscard]] std::vector<EndUse> uses_in_words(const EndStrength& strength, const demand::SupportReaction& forces);

[[nodiscard]] EndStrength end_strength(const catalog::Resolved& resolved, const EndPlace& place);
/// The largest of a motion's force alone, in the unit of `force`, whose fields are as large as they are to each other.
/// 0 where nothing resists it.
[[nodiscard]] double capacity_alone(const EndStrength& strength, const demand::SupportReaction& force);

// A file a kind.
[[nodiscard]] EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place, std::monostate nothing);
[[nodiscard]] EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place,
                                      const model::EndGrainFasteners& fasteners);
[[nodiscard]] EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place,
                                      const model::ToeNails& nails);
[[nodiscard]] EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place,
                                      const model::SideAngles& angles);
[[nodiscard]] EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place,
                                      const model::ReportedConnector& connector);

// A straight line of fasteners, evenly spaced, under a couple in its own plane: elastic group, common practice.

/// Force on the outermost fastener for each lb in: r_max over the sum of r^2, 1/in. `spread_in` between the outermost
/// two, > 0; 0 for fewer than two fasteners, which resist no couple.
[[nodiscard]] inline double outermost_per_couple(int count, double spread_in) {
    if (count < 2 || !(spread_in > 0.0)) return 0.0;
    const double n = count;
    return 6.0 * (n - 1.0) / (spread_in * n * (n + 1.0));
}

}  // namespace toehold::checks
