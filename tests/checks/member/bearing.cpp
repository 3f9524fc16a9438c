#include "checks/run_check.h"

#include "support/compare.h"
#include "support/example.h"

using namespace toehold;
using checks::Status;

TEST_CASE("each block under the plate bears to its wood's value across the grain", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto results =
        test::run_check("bearing-framing", resolved, test::example_demand(resolved, {}, {500.0, 2000.0}));
    REQUIRE(results.size() == 2);
    // peaks 500/5 = 100 and 2000/5 = 400 psi; 565 x 0.67 = 378.55 psi
    CHECK_CLOSE(results[0].demand, 100.0, 1e-12, 0.0);
    CHECK_CLOSE(results[1].demand, 400.0, 1e-12, 0.0);
    CHECK_CLOSE(results[1].capacity, 378.55, 1e-12, 0.0);
    CHECK(results[0].status == Status::holds);
    CHECK(results[1].status == Status::fails);
    CHECK(test::link_words(results[1]) == "decking > block B2: bearing");
}

TEST_CASE("a plate that stands on the block itself says so in its link", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).layers.decking.reset();
    const auto results = test::run_check("bearing-framing", resolved, test::example_demand(resolved, {}, {500.0}));
    CHECK(test::link_from(results.at(0)) == "plate");
}

TEST_CASE("a joist under the plate bears as a block does, and open decking is not framing", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.joists->grade.compression_perp_psi = 405.0;
    demand::Demand demand = test::example_demand(resolved, {}, {500.0, 2000.0});
    demand.supports[0] = {
        demand::SupportKind::member, 2, {model::PartKind::joist, "J1"}, 28000.0, format::verbatim("test")};
    demand.supports[1] = {
        demand::SupportKind::open_bed, 0, {model::PartKind::decking}, 28000.0, format::verbatim("test")};
    const auto results = test::run_check("bearing-framing", resolved, demand);
    REQUIRE(results.size() == 1);
    CHECK(test::about(results[0]) == "joist J1");
    CHECK_CLOSE(results[0].capacity, 405.0 * 0.67, 1e-12, 0.0);
}

TEST_CASE("the worst state gives the pressure and the direction", "[unit]") {
    const catalog::Resolved resolved = test::example_resolved();
    demand::Demand demand = test::example_demand(resolved, {}, {500.0});
    demand.states.push_back(demand.states[0]);
    demand.states[1].supports[0].peak_psi = 333.0;
    demand.states[1].direction_rad = 0.0;
    const auto results = test::run_check("bearing-framing", resolved, demand);
    CHECK_CLOSE(results.at(0).demand, 333.0, 1e-12, 0.0);
    CHECK(results.at(0).direction_deg == Approx(0.0));
}
