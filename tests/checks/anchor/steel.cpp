// The steel of the example's lag screws and of A307 through-bolts, by hand.
#include "checks/anchor/bolt_example.h"
#include "checks/run_check.h"
#include "support/compare.h"
#include "support/example.h"

using namespace toehold;
using catalog::FastenerKind;
using checks::Status;
using test::run_check;
using test::step_value;

namespace {

constexpr demand::AnchorForce force{800.0, 0.0, 50.0};

checks::CheckResult first_of(const std::string& id, const catalog::Resolved& resolved,
                             demand::AnchorForce on_each = force) {
    const auto results = run_check(id, resolved, test::example_demand(resolved, on_each, {}));
    REQUIRE(results.size() == 4);
    return results[0];
}

catalog::Resolved reported_example(double tension_lb, double lateral_lb) {
    catalog::Resolved resolved = test::example_resolved();
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.kind = FastenerKind::reported;
        anchor.reported = model::ReportedFastener{};
        anchor.reported->report = "test report, table 2";
        anchor.reported->withdrawal_lb_per_in = 250.0;
        anchor.reported->tension_lb = tension_lb;
        anchor.reported->lateral_lb = lateral_lb;
    }
    return resolved;
}

}  // namespace

TEST_CASE("A lag screw's steel is judged at its root", "[unit][A19]") {
    // 0.75 x 60,000 x pi/4 x 0.265^2 / 2.00 = 45,000 x 0.0551546 / 2 = 1241.0 lb.
    const auto result = first_of("anchor-steel-tension", test::example_resolved());
    CHECK_CLOSE(result.capacity, 1241.0, 0.0, 0.05);
    CHECK(result.demand == 800.0);
    CHECK(result.status == Status::holds);
    CHECK(result.direction_deg == 90.0);
    // 0.5.0 named 12.2.1.3.
    CHECK(result.clause.find("NDS 2018 12.2.1.4") != std::string::npos);
    CHECK(test::link_words(result) == "plate > anchor A: shank in tension");
    CHECK_CLOSE(step_value(result, "F_nt") * step_value(result, "A_b") / step_value(result, "Omega"), result.capacity,
                1e-12, 0.0);
}

TEST_CASE("A 1/2 in A307 through-bolt has the tabulated usable strengths", "[published]") {
    // AISC 360-10 Table J3.2, on the nominal area: 4.418 kip tension, 2.651 kip shear (ASD).
    const auto resolved = test::bolted_example();
    CHECK(test::prints_as(first_of("anchor-steel-tension", resolved).capacity, 4418.0, 1.0));
    CHECK(test::prints_as(first_of("anchor-steel-shear", resolved).capacity, 2651.0, 1.0));
}

TEST_CASE("LRFD takes phi of 0.75 on the nominal strength of anchor steel", "[unit]") {
    auto resolved = test::bolted_example();
    resolved.detail.basis.method = model::Method::lrfd;
    // 45,000 x 0.1963495 x 0.75 = 6626.8 lb.
    CHECK_CLOSE(first_of("anchor-steel-tension", resolved).capacity, 6626.8, 0.0, 0.05);
}

TEST_CASE("Shear of a lag screw's root has the threads in the plane", "[unit]") {
    // 0.450 x 60,000 x 0.0551546 / 2.00 = 744.6 lb; demand is the resultant of 30 and 40.
    const auto result = first_of("anchor-steel-shear", test::example_resolved(), {0.0, 30.0, 40.0});
    CHECK_CLOSE(result.capacity, 744.6, 0.0, 0.05);
    CHECK_CLOSE(result.demand, 50.0, 1e-12, 0.0);
}

TEST_CASE("Tension and shear of one push add beyond three tenths", "[unit]") {
    // 800/1240.98 = 0.64465, 50/744.59 = 0.06715: tension alone governs.
    CHECK_CLOSE(first_of("anchor-steel-combined", test::example_resolved()).ratio, 0.64465, 0.0, 1e-4);
    // 800/1240.98 and 600/744.59 = 0.80581: (0.64465 + 0.80581)/1.3 = 1.11574.
    const auto result = first_of("anchor-steel-combined", test::example_resolved(), {800.0, 0.0, 600.0});
    CHECK_CLOSE(result.ratio, 1.11574, 0.0, 1e-4);
    CHECK(result.status == Status::fails);
}

TEST_CASE("Tension and shear are never taken from different pushes", "[property]") {
    const auto resolved = test::example_resolved();
    auto demand = test::example_demand(resolved, {1200.0, 0.0, 0.0}, {});
    demand.states.push_back(demand.states[0]);
    for (demand::AnchorForce& anchor : demand.states[1].anchors) anchor = {0.0, 700.0, 0.0};
    // 1200/1240.98 = 0.96698 alone and 700/744.59 = 0.94012 alone; together they would be 1.467.
    CHECK_CLOSE(run_check("anchor-steel-combined", resolved, demand).at(0).ratio, 0.96698, 0.0, 1e-4);
}

TEST_CASE("A reported fastener without its own tension value lacks evidence", "[bad-input]") {
    const auto result = first_of("anchor-steel-tension", reported_example(0.0, 300.0));
    CHECK(result.status == Status::missing_evidence);
    CHECK(result.demand == 800.0);
    CHECK_FALSE(result.note.empty());
    const auto resolved = reported_example(0.0, 300.0);
    CHECK(run_check("anchor-steel-combined", resolved, test::example_demand(resolved, force, {})).empty());
}

TEST_CASE("A reported fastener is held to its report, and its shear to the lateral check", "[unit]") {
    auto resolved = reported_example(1000.0, 400.0);
    CHECK(first_of("anchor-steel-tension", resolved).capacity == 1000.0);
    CHECK(first_of("anchor-steel-tension", resolved).clause == "report: test report, table 2");
    CHECK(run_check("anchor-steel-shear", resolved, test::example_demand(resolved, force, {})).empty());
    // 800/1000 + 50/400 = 0.925, linear.
    CHECK_CLOSE(first_of("anchor-steel-combined", resolved).ratio, 0.925, 1e-12, 0.0);
    resolved.detail.basis.method = model::Method::lrfd;
    CHECK_CLOSE(first_of("anchor-steel-tension", resolved).capacity, 1600.0, 1e-12, 0.0);
}

TEST_CASE("A bolt of unknown grade lacks evidence", "[bad-input]") {
    auto resolved = test::bolted_example();
    for (catalog::Anchor& anchor : resolved.anchors) anchor.bolt_grade.reset();
    CHECK(first_of("anchor-steel-tension", resolved).status == Status::missing_evidence);
    CHECK(first_of("anchor-steel-shear", resolved).status == Status::missing_evidence);
}
