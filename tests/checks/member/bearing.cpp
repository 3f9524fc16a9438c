#include "checks/run_check.h"

#include "mechanics/plane/geometry.h"
#include "model/placement.h"
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

namespace {

/// A plate on two blocks, 8 in along them: it presses the outer 1.5 in of the 2.75 in that it covers of B2, from
/// nothing to 500 psi at its edge at y = 4.
demand::Demand edge_pressed(const catalog::Resolved& resolved, double along_in) {
    demand::Demand demand = test::example_demand(resolved, {}, {0.0, 0.0});
    const double half_in = 0.5 * along_in;
    demand.supports[1].outline = {{-half_in, 1.25}, {half_in, 1.25}, {half_in, 4.0}, {-half_in, 4.0}};
    const double force_lb = 0.5 * 500.0 * 1.5 * along_in;
    demand.states[0].supports[1] = {force_lb, {0.0, 3.5}, 500.0, {0.0, 4.0}, 1.5 * along_in};
    return demand;
}

}  // namespace

TEST_CASE("a pressure that falls off from the plate's edge is held as a block about its resultant",
          "[closed-form][B2]") {
    const catalog::Resolved resolved = test::example_resolved();
    const auto results = test::run_check("bearing-framing", resolved, edge_pressed(resolved, 8.0));
    // N = 500/2 x 1.5 x 8 = 3000 lb at a third of 1.5 in, 0.5 in from the edge: a block 1 in by 8 in, 375 psi. The mean
    // over the 12 in2 that touch is 250, the peak 500. 565 x 0.67 = 378.55 psi, C_b 1 (8 in long). 0.5.0 held the peak.
    REQUIRE(results.size() == 2);
    CHECK_CLOSE(results[1].demand, 375.0, 1e-9, 0.0);
    CHECK_CLOSE(results[1].capacity, 378.55, 1e-9, 0.0);
    CHECK(results[1].status == Status::holds);
    CHECK_CLOSE(test::step_value(results[1], "p_max"), 500.0, 1e-12, 0.0);
    CHECK_CLOSE(test::step_value(results[1], "p_mean"), 250.0, 1e-12, 0.0);
    CHECK_CLOSE(test::step_value(results[1], "A_b"), 8.0, 1e-9, 0.0);
}

TEST_CASE("a block about the resultant counts no more than what touches", "[closed-form]") {
    // All of the patch is symmetric about its middle: 2.75 x 8 = 22 in2, of which 20 touch. 3000/20 = 150 psi.
    const catalog::Resolved resolved = test::example_resolved();
    demand::Demand demand = edge_pressed(resolved, 8.0);
    demand.states[0].supports[1] = {3000.0, {0.0, 2.625}, 500.0, {0.0, 4.0}, 20.0};
    CHECK_CLOSE(test::run_check("bearing-framing", resolved, demand).at(1).demand, 150.0, 1e-9, 0.0);
}

TEST_CASE("a short block away from the member's end has C_b", "[published]") {
    catalog::Resolved resolved = test::example_resolved();
    // NDS 2018 Table 3.10.4: 1.10 for 4 in, (4 + 3/8)/4 = 1.094; the block runs 5.25 in on beyond the pressed part.
    const auto results = test::run_check("bearing-framing", resolved, edge_pressed(resolved, 4.0));
    CHECK_CLOSE(results.at(1).capacity, 378.55 * 1.09375, 1e-9, 0.0);
    // 1.75 for the table's first row, 1/2 in.
    CHECK_CLOSE(test::run_check("bearing-framing", resolved, edge_pressed(resolved, 0.5)).at(1).capacity, 378.55 * 1.75,
                1e-9, 0.0);
    resolved.detail.framing.blocks[1].to_in = 4.9;
    const auto near_end = test::run_check("bearing-framing", resolved, edge_pressed(resolved, 4.0));
    CHECK_CLOSE(near_end.at(1).capacity, 378.55, 1e-9, 0.0);
}

TEST_CASE("the many corners of a round plate's edge cost the block next to nothing", "[closed-form]") {
    // A whole circle of 4 in pressed at its middle with 100 psi over all of it: pi 16 = 50.27 in2.
    const catalog::Resolved resolved = test::example_resolved();
    demand::Demand demand = test::example_demand(resolved, {}, {0.0, 0.0});
    demand.supports[1].outline = model::polygon(model::CircleOutline{8.0, {0.0, 2.5}});
    demand.states[0].supports[1] = {5026.5, {0.0, 2.5}, 110.0, {0.0, 4.0}, 50.265};
    const auto results = test::run_check("bearing-framing", resolved, demand);
    CHECK_CLOSE(results.at(1).demand, 100.0, 0.01, 0.0);
    CHECK(results.at(1).demand >= 100.0);
}

TEST_CASE("a rounded corner or a cut by the member's edge loses no side of the patch", "[closed-form]") {
    // 8 x 8 with 1/4 in corners over a member whose edge cuts it at y = 0.5: 8 x 3.5 less two corners of
    // (1 - pi/4)/16 in2 each; the chords take (pi/4 - 1/2)/16 more of each.
    const catalog::Resolved resolved = test::example_resolved();
    demand::Demand demand = test::example_demand(resolved, {}, {0.0, 0.0});
    const mechanics::Polygon plate = [] {
        mechanics::Polygon polygon;
        for (const model::Position at : model::polygon(model::RectangleOutline{8.0, 8.0, 0.25, {}}))
            polygon.push_back({at.x_in, at.y_in});
        return polygon;
    }();
    for (const mechanics::Point at : mechanics::clip_rectangle(plate, -7.25, 7.25, 0.5, 5.0))
        demand.supports[1].outline.push_back({at.x, at.y});
    demand.states[0].supports[1] = {2793.0, {0.0, 2.25}, 200.0, {0.0, 4.0}, 28.0};
    const auto results = test::run_check("bearing-framing", resolved, demand);
    CHECK_CLOSE(test::step_value(results.at(1), "A_b"), 27.9, 0.0, 0.1);
}

TEST_CASE("the elastic peak is held where the file asks for it, and under a notched plate", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    demand::Demand demand = edge_pressed(resolved, 8.0);
    demand.supports[1].outline.insert(demand.supports[1].outline.begin() + 1, {0.0, 2.0});
    CHECK_CLOSE(test::run_check("bearing-framing", resolved, demand).at(1).demand, 500.0, 1e-12, 0.0);
    resolved.detail.basis.bearing = model::BearingStress::peak;
    const auto results = test::run_check("bearing-framing", resolved, edge_pressed(resolved, 8.0));
    CHECK_CLOSE(results.at(1).demand, 500.0, 1e-12, 0.0);
    CHECK(results.at(1).status == Status::fails);
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

TEST_CASE("the state that uses most of the wood governs, not the one that presses most", "[closed-form]") {
    // At the middle 22 in2 in 8 in: 385 psi without C_b. At x = 2 a block of 4 in, 11 in2: 400 psi, but C_b 1.094.
    const catalog::Resolved resolved = test::example_resolved();
    demand::Demand demand = edge_pressed(resolved, 8.0);
    demand.states.push_back(demand.states[0]);
    demand.states[0].supports[1] = {4400.0, {2.0, 2.625}, 2000.0, {4.0, 4.0}, 22.0};
    demand.states[1].supports[1] = {8470.0, {0.0, 2.625}, 2000.0, {4.0, 4.0}, 22.0};
    const auto result = test::run_check("bearing-framing", resolved, demand).at(1);
    CHECK_CLOSE(result.demand, 385.0, 1e-9, 0.0);
    demand.states.pop_back();
    CHECK_CLOSE(test::run_check("bearing-framing", resolved, demand).at(1).capacity, 378.55 * 1.09375, 1e-9, 0.0);
}
