#include "checks/run_check.h"
#include "support/compare.h"
#include "support/example.h"

#include <cmath>

using namespace toehold;
using namespace toehold::checks;

namespace {

std::vector<CheckResult> combined(const catalog::Resolved& resolved, demand::AnchorForce force) {
    return test::run_check("anchor-combined", resolved, test::example_demand(resolved, force, {0.0, 0.0}));
}

catalog::Resolved reported(double withdrawal_lb_per_in, double tension_lb, double lateral_lb) {
    catalog::Resolved resolved = test::example_resolved();
    catalog::Anchor& anchor = resolved.anchors.front();
    anchor.kind = catalog::FastenerKind::reported;
    anchor.reported = model::ReportedFastener{};
    anchor.reported->withdrawal_lb_per_in = withdrawal_lb_per_in;
    anchor.reported->tension_lb = tension_lb;
    anchor.reported->lateral_lb = lateral_lb;
    anchor.thread_in_block_in = 3.0;
    return resolved;
}

}  // namespace

TEST_CASE("A lag screw pulled and pushed at once meets Eq. 12.4-1", "[published]") {
    // W = 352 lb/in (NDS 2018 Table 12.2A, G .55, 3/8 in) x 3.28125 in x 0.7 wet = 808.5 lb.
    // Z' = 62.4 x 0.7 x 0.997 = 43.55 lb (anchor_lateral.cpp). T 500, V 30: R = 500.90, cos^2 = .003587, sin^2 =
    // .996413 Z'_alpha = 1 / (.003587 / 43.55 + .996413 / 808.5) = 760.6 lb, ratio .6586
    const CheckResult result = combined(test::example_resolved(), {500.0, 0.0, 30.0}).front();
    CHECK_CLOSE(result.demand, std::hypot(500.0, 30.0), 1e-12, 0.0);
    CHECK_CLOSE(result.capacity, 760.6, 2e-3, 0.0);
    CHECK_CLOSE(result.ratio, 0.6586, 2e-3, 0.0);
    CHECK_CLOSE(test::step_value(result, "alpha"), 86.566, 0.0, 0.001);  // atan(500/30)
    CHECK(test::link_to(result) == "block B1");
}

TEST_CASE("Pull alone and lateral force alone fall back to each one's value", "[property]") {
    const catalog::Resolved resolved = test::example_resolved();
    CHECK_CLOSE(combined(resolved, {500.0, 0.0, 0.0}).front().capacity, 808.5, 2e-3, 0.0);
    CHECK_CLOSE(combined(resolved, {0.0, 0.0, 30.0}).front().capacity, 43.55, 4e-3, 0.0);
}

TEST_CASE("An anchor that feels nothing holds", "[unit]") {
    const CheckResult result = combined(test::example_resolved(), {0.0, 0.0, 0.0}).front();
    CHECK(result.ratio == 0.0);
    CHECK(result.status == Status::holds);
}

TEST_CASE("A reported fastener adds its two ratios", "[unit]") {
    // T_a = min(250 x 3, 600) = 600: 300/600 + 50/200 = 0.75
    const CheckResult result = combined(reported(250.0, 600.0, 200.0), {300.0, 30.0, 40.0}).front();
    CHECK_CLOSE(result.ratio, 0.75, 1e-12, 0.0);
    CHECK(result.unit.empty());
    // without the fastener's own tension: 300/750 + 0.25 = 0.65
    CHECK_CLOSE(combined(reported(250.0, 0.0, 200.0), {300.0, 30.0, 40.0}).front().ratio, 0.65, 1e-12, 0.0);
}

TEST_CASE("A reported fastener with one value missing lacks evidence", "[unit]") {
    CHECK(combined(reported(250.0, 600.0, 0.0), {300.0, 0.0, 40.0}).front().status == Status::missing_evidence);
    CHECK(combined(reported(0.0, 0.0, 200.0), {300.0, 0.0, 40.0}).front().status == Status::missing_evidence);
}

TEST_CASE("Through-bolts and anchors that land nowhere are left to other checks", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[0].kind = catalog::FastenerKind::through_bolt;
    resolved.anchors[1].seat.reset();
    const auto results = combined(resolved, {300.0, 0.0, 30.0});
    REQUIRE(results.size() == 2);
    CHECK(test::about(results.front()) == "anchor C");
}

TEST_CASE("Thread that is missing leaves nothing to pull on", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[0].thread_in_block_in = 0.0;
    const CheckResult result = combined(resolved, {300.0, 0.0, 30.0}).front();
    CHECK(result.capacity == 0.0);
    CHECK(result.status == Status::no_path);
}
