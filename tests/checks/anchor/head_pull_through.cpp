// A nut on bare wood.
#include "checks/anchor/bolt_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::Status;
using test::bolted_example;
using test::run_check;
using test::run_finding;
using test::step_value;

namespace {

std::vector<checks::CheckResult> results(const catalog::Resolved& resolved) {
    return run_check("head-pull-through", resolved, test::example_demand(resolved, {200.0, 0.0, 50.0}, {}));
}

}  // namespace

TEST_CASE("A nut on bare wood is held by pull-through and by the ring under it", "[closed-form]") {
    // WH = 1725 pi 0.75^2 x 0.55^2 = 922.12 lb (5.5 in of wood is more than 2.5 x 0.75), wet x 0.7 = 645.5 lb.
    // Ring: pi/4 (0.75^2 - 0.5625^2) = 0.193282 in2, x 565 x 0.67 = 73.17 lb, which leads.
    const auto all = results(bolted_example());
    REQUIRE(all.size() == 4);
    CHECK_CLOSE(step_value(all[0], "W_H"), 922.12, 0.0, 0.01);
    CHECK_CLOSE(step_value(all[0], "W_H'"), 645.5, 0.0, 0.05);
    CHECK_CLOSE(all[0].capacity, 73.17, 0.0, 0.01);
    CHECK(all[0].status == Status::fails);
    CHECK(test::says(all[0].note, "round heads"));
    CHECK(test::link_words(all[0]) == "anchor A > block B1: nut on the wood");
}

TEST_CASE("Pull-through of the head is not for screws, nor for a nut on a washer or a plate", "[unit]") {
    CHECK(results(test::example_resolved()).empty());
    auto resolved = bolted_example();
    resolved.anchors[0].washer_below = catalog::WasherSize{"w", "washer", 2.0, 0.5625, 0.1875, {}};
    resolved.anchors[1].backing = model::BackingPlate{3.0, 3.0, 0.25, "steel-a36"};
    resolved.anchors[2].seat.reset();
    CHECK(results(resolved).size() == 1);
}

TEST_CASE("A nut without a washer is a finding, with one it is none", "[unit]") {
    auto resolved = bolted_example();
    const auto findings = run_finding("bolt-without-washer", resolved);
    REQUIRE(findings.size() == 4);
    CHECK(findings[0].severity == checks::Severity::fails);
    CHECK(test::about(findings[0]) == "anchor A");
    for (auto& anchor : resolved.anchors)
        anchor.washer_below = catalog::WasherSize{"w", "washer", 2.0, 0.5625, 0.1875, {}};
    CHECK(run_finding("bolt-without-washer", resolved).empty());
    CHECK(run_finding("bolt-without-washer", test::example_resolved()).empty());
}
