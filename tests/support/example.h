#pragma once
// A plain resolved detail and a one-state demand for tests of checks: round numbers, nothing read from a file.
// Two flat-lying 3.5 in wide, 5.5 in deep blocks (B1 under the heel row y = -2.5, B2 under the toe row y = +2.5),
// 5.5 x 7 in steel plate 3/8 in, four 3/8 x 6 lag screws A..D at (+-2, +-2.5), 1 in wood decking, 2 x 2 x 1/8 tube.
#include "catalog/resolve.h"
#include "demand/demand.h"

namespace toehold::test {

[[nodiscard]] catalog::Resolved example_resolved();

/// One load case of 200 lb at 42 in, one nominal scenario, one state in direction 90 degrees with the given force on
/// every anchor, and with bearing force on each block given in block order (at the block's plan centre, toe side).
[[nodiscard]] demand::Demand example_demand(const catalog::Resolved& resolved, demand::AnchorForce on_each,
                                            const std::vector<double>& bearing_lb);

}  // namespace toehold::test
