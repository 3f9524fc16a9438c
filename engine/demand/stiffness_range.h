#pragma once
// Stiffness of bed and anchors is known to a factor, not to a digit: between two published ends, each named. The demand
// is found at the center and at those corners of the two ranges that can govern, and the largest force of all is used.
//
// What moves the anchors' tension is the ratio of anchor to bed: stiff anchors on a soft bed widen the pressed area,
// its resultant moves inward, the lever arm shrinks and the tension grows. Soft anchors on a stiff bed press the most
// on the least area. Both stiff make the most of framing that gives, since then little else does. Both soft, or both
// stiff on rigid framing, are as the center (tests hold that to the example, corner by corner). What the two ranges
// share they share: the wood under a bolt's nut is the wood under the plate, and is never soft for one and stiff for
// the other.
#include "demand/demand.h"

#include <optional>
#include <vector>

namespace toehold::demand {

struct Ranges {
    std::vector<StiffnessScenario> scenarios;    ///< the center first
    std::optional<StiffnessRange> bed, anchors;  ///< absent where the file fixes the stiffness
};

/// Where framing can give, on rigid framing first and then on framing that gives.
[[nodiscard]] Ranges stiffness_ranges(const catalog::Resolved& resolved, bool framing_can_flex);

/// Bed and anchors each at an end of its range, on framing that stands still: the base at its softest or stiffest is
/// none of those corners. The center where the file fixes the stiffness.
[[nodiscard]] StiffnessScenario stiffness_scenario(const catalog::Resolved& resolved, RangeEnd bed, RangeEnd anchors);

}  // namespace toehold::demand
