#pragma once
// The example detail resolved by hand, and a one-state demand on it, for tests of checks: nothing read from a file.
#include "catalog/resolve.h"
#include "demand/demand.h"
#include "support/example_detail.h"

namespace toehold::test {

[[nodiscard]] catalog::Resolved example_resolved();

/// One load case of 200 lb at 42 in, one nominal scenario, one state in direction 90 degrees with the given force on
/// every anchor, and with bearing force on each block given in block order (at the block's plan centre, toe side).
[[nodiscard]] demand::Demand example_demand(const catalog::Resolved& resolved, demand::AnchorForce on_each,
                                            const std::vector<double>& bearing_lb);

}  // namespace toehold::test
