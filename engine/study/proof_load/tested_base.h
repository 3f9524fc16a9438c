#pragma once
// A base under a load test's push, and under nothing else: outward, level, at the guard's top, at the center of the
// ranges of stiffness, on framing that stands still and, where it can, on framing that gives.
#include "checks/prepared.h"
#include "checks/result.h"
#include "demand/demand.h"
#include "model/basis.h"

#include <memory>
#include <optional>
#include <vector>

namespace toehold::catalog {
struct Resolved;
}

namespace toehold::study {

/// One state under the test's push. Without a preload and a vertical force everything the guard puts on the base grows
/// in proportion to the push; the deck's own weight on its joists stays as it is.
struct TestedState {
    bool framing_gives = false;
    demand::Demand demand;  ///< of this state alone, under `push_lb`
    double push_lb = 0.0;
    /// What the checks found of it whatever the basis; shared by copies.
    std::shared_ptr<checks::Prepared> prepared = std::make_shared<checks::Prepared>();
};

struct TestedBase {
    double push_lb = 0.0;
    double height_in = 0.0;            ///< of the push above the bearing plane
    std::vector<TestedState> central;  ///< framing that stands still first
};

struct TestedBaseOutcome {
    std::optional<TestedBase> base;  ///< absent: `failure` says why no number can be given
    format::Phrase failure;
};

/// `push_lb` > 0. Refuses tightened anchors, whose forces do not grow with the push, and a base that overturns.
[[nodiscard]] TestedBaseOutcome test_base(const catalog::Resolved& resolved, double push_lb);

/// The state under another push, with all that grows of what was prepared.
[[nodiscard]] TestedState under(const catalog::Resolved& resolved, const TestedState& state, double push_lb);

/// What every check finds of it on allowable stress design with the factors of load duration at 1.0, as a strength at
/// a test's speed is found from, and this moisture.
[[nodiscard]] std::vector<checks::CheckResult> check_state(catalog::Resolved resolved, const TestedState& state,
                                                           model::Moisture moisture);

}  // namespace toehold::study
