// Holes in the example's plate against its edges and against the anchors' shear, by hand.
#include "checks/plate/holes.h"

#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"

using namespace toehold;
using checks::Status;
using test::run_check;

TEST_CASE("A hole's clear edge distance is measured from the hole as it is", "[closed-form]") {
    model::Plate plate = on_deck(test::example_resolved().detail).plate;  // 5.5 x 7, holes 7/16 in at (+-2, +-2.5)
    CHECK_CLOSE(checks::clear_edge_in(plate, plate.holes.front()), 0.75 - 0.21875, 1e-12, 0.0);
    // A slot 1 in long, 1/2 wide, turned 30 degrees at (2, 0): its round end reaches x = 2 + 0.25 cos 30 + 0.25.
    plate.holes.push_back({"S", {2.0, 0.0}, model::Slot{1.0, 0.5, 30.0}});
    CHECK_CLOSE(checks::clear_edge_in(plate, plate.holes.back()), 0.75 - 0.25 * 0.8660254 - 0.25, 0.0, 1e-7);
    plate.holes.push_back({"O", {2.7, 0.0}, model::RoundHole{0.5}});
    CHECK_CLOSE(checks::clear_edge_in(plate, plate.holes.back()), -0.2, 0.0, 1e-9);
}

TEST_CASE("Each hole keeps its least distance from the plate's edge", "[unit]") {
    auto resolved = test::example_resolved();
    const auto demand = test::example_demand(resolved, {}, {});
    const auto results = run_check("plate-hole-edge", resolved, demand);
    REQUIRE(results.size() == 4);
    // 1.5 x 3/8 - 7/32 = 0.34375 in needed, 0.53125 in there.
    CHECK_CLOSE(results[0].demand, 0.34375, 1e-12, 0.0);
    CHECK_CLOSE(results[0].capacity, 0.53125, 1e-12, 0.0);
    CHECK(results[0].status == Status::holds);
    on_deck(resolved.detail).plate.holes[0].center = {-2.3, -2.5};  // 0.45 in to the edge, 0.23125 clear
    CHECK(run_check("plate-hole-edge", resolved, demand).at(0).status == Status::fails);
    resolved.anchors[0].diameter_in = 0.5;  // table: 3/4 - 9/32
    CHECK_CLOSE(run_check("plate-hole-edge", resolved, demand).at(0).demand, 0.46875, 1e-12, 0.0);
}

TEST_CASE("An anchor's shear leans on its hole", "[unit]") {
    auto resolved = test::example_resolved();
    const auto demand = test::example_demand(resolved, {0.0, 30.0, 40.0}, {});
    const auto result = run_check("plate-hole-bearing", resolved, demand).at(0);
    // 1.2 x 0.53125 x 0.375 x 58,000 / 2.00 = 6932.8 lb.
    CHECK_CLOSE(result.capacity, 6932.8, 0.0, 0.05);
    CHECK_CLOSE(result.demand, 50.0, 1e-12, 0.0);
    on_deck(resolved).plate_metal = test::example_aluminum();
    // (0.53125 + 0.1875) x 0.375 x 24,000 / 1.95 = 3317.3 lb; 2 D = 0.75 is more.
    CHECK_CLOSE(run_check("plate-hole-bearing", resolved, demand).at(0).capacity, 3317.3, 0.0, 0.05);
}
