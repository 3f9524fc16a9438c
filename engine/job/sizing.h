#pragma once
// The hand estimate: rows of anchors, plate and screws for the moment at the plate.
#include "job/design.h"

namespace toehold::job {

/// Fills in `tension_lb`, `row_x_in`, `row_y_in`, `screw_length_in` and `thickness_in`; all else but those is there.
void size_base(const Job& job, Design& design, const catalog::Catalog& catalog);

/// The same of a post on the rim: bolts as far apart as 4 D to the rim's edges leaves them.
[[nodiscard]] SideDesign side_design(const Job& job, const Design& design);
/// What its upper bolts draw under the code's push: that times its height above the post's lower end, over the arm from
/// there to them.
[[nodiscard]] double side_tension_lb(const Job& job, const Design& design, const SideDesign& side);

}  // namespace toehold::job
