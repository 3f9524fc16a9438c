#pragma once
// Every registered check on one detail under load.
#include "checks/prepared.h"
#include "checks/result.h"
#include "demand/demand.h"

#include <vector>

namespace toehold::catalog {
struct Resolved;
}

namespace toehold::review {

/// The checks on one detail under one demand, run as often as another basis is asked about: what no basis changes is
/// found in the first run and kept for the others. One thread at a time.
class CheckRuns {
  public:
    CheckRuns() = default;
    explicit CheckRuns(checks::Asked asked) : asked_(asked) {}

    /// Sorted worst first. Where the loads last differently long (wind beside the guard's load), every check is run for
    /// the loads of each duration with the factor of that duration, and of each result the worse is kept: not the
    /// largest force but the largest ratio decides. `resolved` and `demand` are the same in every run, the basis apart.
    [[nodiscard]] std::vector<checks::CheckResult> run(const catalog::Resolved& resolved, const demand::Demand& demand);

  private:
    struct OfDuration {
        demand::LoadDuration duration;
        demand::Demand demand;  ///< of that duration alone; empty where all loads last alike
        checks::Prepared prepared = {};
    };
    void make_parts(const demand::Demand& demand);

    checks::Asked asked_ = checks::Asked::numbers;
    std::vector<OfDuration> parts_;
};

/// Run once.
[[nodiscard]] std::vector<checks::CheckResult> run_checks(const catalog::Resolved& resolved,
                                                          const demand::Demand& demand);

}  // namespace toehold::review
