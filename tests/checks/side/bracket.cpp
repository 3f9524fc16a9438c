// A metal post's bracket, by hand: its plate in bending, its welds, its holes.
#include "checks/run_check.h"
#include "checks/side/side_example.h"
#include "support/compare.h"

#include <cmath>

using namespace toehold;
using checks::Status;
using test::bracket_example;
using test::run_check;
using test::side_demand;
using test::step_value;

TEST_CASE("an anchor bends the bracket's plate from the toe of the weld", "[closed-form]") {
    // Toe at 1 + 3/16 in, anchor at 2-1/4: arm 1.0625 in. The strip: half the 5 in to the lower anchor and 1.5 in to
    // the plate's top, 4 in; at most washer and twice the arm, 2 + 2.125 = 4.125. M = 1000 x 1.0625; M_c = 36000 x 4 x
    // 0.375^2/4/1.67 = 3031.4 lb in.
    const catalog::Resolved resolved = bracket_example();
    const auto result = run_check("side-bracket-bending", resolved, side_demand(resolved, {{1000.0, 0.0, 0.0}})).at(0);
    CHECK_CLOSE(result.demand, 1062.5, 1e-9, 0.0);
    CHECK_CLOSE(step_value(result, "b_s"), 4.0, 1e-9, 0.0);
    CHECK_CLOSE(result.capacity, 36000.0 * 4.0 * 0.140625 / 4.0 / 1.67, 1e-9, 0.0);
    CHECK(test::link_words(result) == "plate > anchor A: plate bending");
}

TEST_CASE("the member's pressure bends what overhangs the weld", "[closed-form]") {
    const catalog::Resolved resolved = bracket_example();
    demand::Demand demand = side_demand(resolved, {});
    demand::Support face{
        demand::SupportKind::member, 2, {model::PartKind::rim, "R1"}, 30000.0, format::verbatim("test")};
    face.presses = {0.0, 1.0, 0.0};
    demand.supports = {face};
    demand.states.front().supports = {{1500.0, {0.0, -7.5}, 400.0, {0.0, -8.5}, 12.0}};
    const auto results = run_check("side-bracket-bending", resolved, demand);
    CHECK(results.back().aspect == "pressed");
    // 400 x (3 - 1.1875)^2/2 = 657.0 lb in an inch.
    CHECK_CLOSE(results.back().demand, 0.5 * 400.0 * 1.8125 * 1.8125, 1e-9, 0.0);
}

TEST_CASE("the couple and the push go through the two welds", "[closed-form]") {
    // Two lines of 8 in, 2 in apart, their middle 4.5 in below the rim's top: 200 lb at 46.5 in, 9300 lb in. At their
    // ends 9300 x 4/(8^3/6) = 435.94 lb/in and 200/16 = 12.5.
    const catalog::Resolved resolved = bracket_example();
    demand::Demand demand = side_demand(resolved, {});
    const auto out = run_check("side-bracket-weld", resolved, demand).at(0);
    CHECK_CLOSE(out.demand, 435.9375 + 12.5, 1e-9, 0.0);
    CHECK(test::link_words(out) == "post > plate: weld");
    // Along the rail: polar 85.333 + 8 x 2^2/2 = 101.333 in3; level 12.5 + 9300 x 4/101.333, upright 9300 x 1/101.333.
    demand.states.front().direction_rad = 0.0;
    const auto along = run_check("side-bracket-weld", resolved, demand).at(0);
    CHECK_CLOSE(along.demand, std::hypot(12.5 + 9300.0 * 4.0 / 101.33333, 9300.0 / 101.33333), 1e-6, 0.0);
}

TEST_CASE("holes keep their distance from the bracket's edges", "[closed-form]") {
    // 3 - 2.25 = 0.75 in to the side, less 9/32: 0.46875 clear; the standard asks 3/4 less 9/32 for 1/2 in.
    const catalog::Resolved resolved = bracket_example();
    const auto edges = run_check("side-hole-edge", resolved, side_demand(resolved, {}));
    REQUIRE(edges.size() == 4);
    CHECK_CLOSE(edges.front().capacity, 0.46875, 1e-9, 0.0);
    CHECK(edges.front().status == Status::holds);
    // 1.2 x 0.46875 x 0.375 x 58000/2.00 = 6117 lb.
    const auto bears = run_check("side-hole-bearing", resolved, side_demand(resolved, {{0.0, 0.0, -500.0}})).at(0);
    CHECK_CLOSE(bears.capacity, 0.5 * 1.2 * 0.46875 * 0.375 * 58000.0, 1e-9, 0.0);
    CHECK(test::link_words(bears) == "plate > anchor A: anchor shank in its hole");
}

TEST_CASE("a bracket's weld and the room beside it are looked at whatever the load", "[unit]") {
    catalog::Resolved resolved = bracket_example();
    CHECK(test::run_finding("side-bracket-weld-small", resolved).empty());
    CHECK(test::run_finding("side-bracket-filler", resolved).empty());
    CHECK(test::run_finding("side-head-on-weld", resolved).empty());
    on_side(resolved.detail).bracket->weld_leg_in = 0.0625;
    CHECK(test::run_finding("side-bracket-weld-small", resolved).size() == 1);
    resolved.anchors[0].at.x_in = -1.5;  // 1.5 less the washer's 1 in is under the weld
    CHECK(test::about(test::run_finding("side-head-on-weld", resolved).at(0)) == "anchor A");
    resolved.post_metal.kind = catalog::MetalKind::aluminum;
    CHECK(test::run_finding("side-bracket-filler", resolved).size() == 1);
}
