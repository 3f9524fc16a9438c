#include "checks/anchor/anchors_in_member.h"

#include "support/compare.h"
#include "support/example.h"

using namespace toehold;
using namespace toehold::checks;

namespace {

demand::State pushing(const catalog::Resolved& resolved, double x_lb, double y_lb) {
    return test::example_demand(resolved, {0.0, x_lb, y_lb}, {}).states.front();
}

}  // namespace

TEST_CASE("Anchors share a block only where they land in it", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(member_mates(resolved, 0) == std::vector<std::size_t>{0, 1});
    CHECK(member_mates(resolved, 3) == std::vector<std::size_t>{2, 3});
    resolved.anchors[1].seat.reset();
    CHECK(member_mates(resolved, 0) == std::vector<std::size_t>{0});
}

TEST_CASE("A second line of anchors across the grain ends the single row", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(single_row_along_grain(resolved, 0));
    resolved.anchors[1].at.y_in += 0.3;  // within a diameter
    CHECK(single_row_along_grain(resolved, 0));
    resolved.anchors[1].at.y_in += 0.7;
    CHECK_FALSE(single_row_along_grain(resolved, 0));
}

TEST_CASE("The row of two comes out as by hand", "[closed-form]") {
    // NDS 2018 Eq. 11.3-1: gamma = 270000 x .375^1.5 = 62003; s = 4; EA block 1.4e6 x 19.25 = 26.95e6, plate
    // 29e6 x .375 x 7 = 76.125e6; u = 1 + 62003 x 2 x (1/26.95e6 + 1/76.125e6) = 1.006230; m = .894430;
    // REA = .354023; Cg = m (1 - m^4) / (2 ((1 + REA m^2)(1 + m) - 1 + m^4)) x (1 + REA)/(1 - m) = .99705
    CHECK_CLOSE(row_factor(test::example_resolved(), 0), 0.99705, 1e-4, 0.0);
}

TEST_CASE("An anchor alone in its block has no row", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[1].seat.reset();
    CHECK(row_factor(resolved, 0) == 1.0);
}

TEST_CASE("End distance counts in the sense the force acts, for every anchor of the block", "[published]") {
    // NDS 2018 Table 12.5.1A: D 3/8: 7 D = 2.625, 4 D = 1.5. Block end moved to x = -4: anchor A at -2 has 2.0 in.
    catalog::Resolved resolved = test::example_resolved();
    CHECK(geometry_factor(mates_placement(resolved, 0), pushing(resolved, -40.0, 0.0)) == 1.0);
    resolved.detail.framing.blocks[0].from_in = -4.0;
    CHECK_CLOSE(geometry_factor(mates_placement(resolved, 0), pushing(resolved, -40.0, 0.0)), 2.0 / 2.625, 1e-12, 0.0);
    CHECK_CLOSE(geometry_factor(mates_placement(resolved, 1), pushing(resolved, -40.0, 0.0)), 2.0 / 2.625, 1e-12, 0.0);
    CHECK(geometry_factor(mates_placement(resolved, 0), pushing(resolved, 40.0, 0.0)) == 1.0);
    CHECK(geometry_factor(mates_placement(resolved, 0), pushing(resolved, 0.0, 40.0)) == 1.0);
    CHECK(geometry_factor(mates_placement(resolved, 2), pushing(resolved, -40.0, 0.0)) == 1.0);  // the other block
}

TEST_CASE("Spacing between three and four diameters lowers the whole block's value", "[published]") {
    // NDS 2018 Table 12.5.1B: 1.2 in apart, 4 D = 1.5: 0.8; 1.1 in is below 3 D = 1.125.
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[1].at.x_in = resolved.anchors[0].at.x_in + 1.2;
    CHECK_CLOSE(geometry_factor(mates_placement(resolved, 0), pushing(resolved, 0.0, 40.0)), 0.8, 1e-12, 0.0);
    resolved.anchors[1].at.x_in = resolved.anchors[0].at.x_in + 1.1;
    CHECK(geometry_factor(mates_placement(resolved, 0), pushing(resolved, 0.0, 40.0)) == 0.0);
}

TEST_CASE("The spacing of unlike anchors is measured in the larger diameter", "[published]") {
    // NDS 2018 Table 12.5.1B: 4 x 1/2 = 2 in for the full value; 1.7 in apart 0.85 of it.
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors[1].diameter_in = 0.5;
    resolved.anchors[1].at.x_in = resolved.anchors[0].at.x_in + 1.7;
    CHECK_CLOSE(geometry_factor(mates_placement(resolved, 0), pushing(resolved, 0.0, 40.0)), 0.85, 1e-12, 0.0);
}
