#pragma once
// Every registered check on one detail under load.
#include "checks/result.h"

#include <vector>

namespace toehold::catalog {
struct Resolved;
}
namespace toehold::demand {
struct Demand;
}

namespace toehold::review {

/// Sorted worst first. Where the loads last differently long (wind beside the guard's load), every check is run for the
/// loads of each duration with the factor of that duration, and of each result the worse is kept: not the largest force
/// but the largest ratio decides.
[[nodiscard]] std::vector<checks::CheckResult> run_checks(const catalog::Resolved& resolved,
                                                          const demand::Demand& demand);

}  // namespace toehold::review
