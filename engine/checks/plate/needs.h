#pragma once
// What the demand asks of the plate in bending, whatever the plate may take: the worst strips, each with what limit
// analysis says of the whole plate in that state. In proportion to the forces.
#include "checks/plate/limit.h"
#include "model/basis.h"

#include <memory>
#include <vector>

namespace toehold::checks {

struct PlateNeed {
    GoverningStrip strip;
    PlateBounds bounds;
};

/// Moment per unit of width that the verdict asks of the plate, lb: by default the better of strip and field, not below
/// what the yield lines need; by choice the yield lines' over 0.9.
[[nodiscard]] double moment_needed_lb(const mechanics::PlateStrip& strip, const PlateBounds& bounds,
                                      model::PlateStrength strength);

/// As kept beside a demand: under the anchors' pull, under the bearing, past an anchor; those there are, in this order.
struct PlateNeeds {
    std::vector<PlateNeed> all;
    /// Under every force so many times as large.
    [[nodiscard]] PlateNeeds grown(double factor) const;
};

/// Of the input's demand, found at the first asking. The basis's strength of a plate says which of the states that pull
/// hardest needs the most of it. `usable_lb`: moment per unit of width the plate may take, 0 where not known; where
/// only failures are asked for, needs that stay below it are found no more precisely than that.
[[nodiscard]] std::shared_ptr<const std::vector<PlateNeed>> plate_needs(const CheckInput& input, const PostFoot& foot,
                                                                        double usable_lb);

}  // namespace toehold::checks
