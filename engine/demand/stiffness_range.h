#pragma once
// Stiffness of bed and anchors is known to a factor, not to a digit: between two published ends, each named. The demand
// is found at the center and at the corners of the two ranges, and the largest force of all is used.
//
// What moves the anchors' tension is the ratio of anchor to bed: with stiff anchors on a soft bed the pressed area
// grows, its resultant moves inward and the lever arm shrinks. A plate that bends, or framing that gives, makes the
// absolute values count too, so all four corners are looked at. What the two ranges share they share: the wood under a
// bolt's nut is the wood under the plate, and is never soft for one and stiff for the other.
#include "demand/demand.h"

#include <optional>
#include <vector>

namespace toehold::demand {

struct Ranges {
    std::vector<StiffnessScenario> scenarios;    ///< the center first
    std::optional<StiffnessRange> bed, anchors;  ///< absent where the file fixes the stiffness
};

/// Where the framing gives, the center and the corners that can govern are asked for on giving framing as well.
[[nodiscard]] Ranges stiffness_ranges(const catalog::Resolved& resolved, bool framing_can_flex);

}  // namespace toehold::demand
