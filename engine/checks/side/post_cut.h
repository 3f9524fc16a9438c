#pragma once
// The post of a mount on a member's side, cut square to its axis: what passes through it at a height, and what of it is
// left there beside a notch and the holes of its fasteners.
#include "checks/registry.h"
#include "demand/demand.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace toehold::catalog {
struct Anchor;
}

namespace toehold::checks {

/// The cut in which something is largest.
struct WorstCut {
    double value = 0.0;
    std::size_t state = 0, cut = 0;
};

/// Over all states and cuts, by `quantity(const demand::PostCut&)` -> double; the first of equal ones. Absent: no state
/// has a cut.
template <class Quantity>
[[nodiscard]] std::optional<WorstCut> worst_cut(const CheckInput& input, Quantity&& quantity) {
    std::optional<WorstCut> worst;
    for (std::size_t state = 0; state < input.demand.states.size(); ++state) {
        const std::vector<demand::PostCut>& cuts = input.demand.states[state].cuts;
        for (std::size_t cut = 0; cut < cuts.size(); ++cut) {
            const double value = quantity(cuts[cut]);
            if (!worst || value > worst->value) worst = WorstCut{value, state, cut};
        }
    }
    return worst;
}
[[nodiscard]] const demand::PostCut& cut_of(const CheckInput& input, const WorstCut& worst);

/// A result for the post in that cut, direction and link set. `by`: what of the post carries on.
[[nodiscard]] CheckResult cut_result(const CheckInput& input, const WorstCut& worst, format::Phrase by);
/// Where the cut is and what bends it.
[[nodiscard]] std::vector<Step> cut_steps(const demand::PostCut& cut);

/// The anchors whose holes weaken the post at this height: those there and, in other lines up the post, those within
/// four diameters. None where a bracket holds the post, or none is at this height.
[[nodiscard]] std::vector<const catalog::Anchor*> drilled_at(const catalog::Resolved& resolved, double z_in);
/// The post's depth at this height: less its notch from the notch's shoulder down.
[[nodiscard]] double depth_at_in(const catalog::Resolved& resolved, double z_in);

}  // namespace toehold::checks
