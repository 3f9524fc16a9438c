// Fillet welds: AISC 360-16 J2.4, and the weld as a line.
#include "resistance/steel/weld.h"

#include "support/compare.h"

#include <cmath>
#include <numbers>

using namespace toehold;
using namespace toehold::resistance;

namespace {

/// Second moment of a rectangle's outline about x, by adding small pieces: nothing of the formula in it.
double outline_second_moment(double width, double depth) {
    constexpr int pieces = 20000;
    double sum = 0.0;
    for (int index = 0; index < pieces; ++index) {
        const double share = (index + 0.5) / pieces;
        const double y_on_side = (share - 0.5) * depth;
        sum += 2.0 * depth / pieces * y_on_side * y_on_side;
        sum += 2.0 * width / pieces * 0.25 * depth * depth;
    }
    return sum;
}

}  // namespace

TEST_CASE("A 3/16 in fillet of E70 has the strength of the published example", "[published]") {
    // AISC Design Examples v14, J.1: 0.60 x 70 ksi x (3/16 / sqrt 2) = 5.57 kip/in nominal.
    CHECK(test::prints_as(steel::weld_metal_lb_per_in(0.1875, 70e3) / 1000.0, 5.57, 0.01));
    CHECK(steel::weld_safety.omega == 2.00);
    CHECK(steel::weld_safety.phi == 0.75);
    CHECK_CLOSE(steel::base_metal_lb_per_in(0.125, 58e3), 4350.0, 1e-12, 0.0);
}

TEST_CASE("The least leg grows with the thinner part", "[unit]") {
    // AISC 360-16 Table J2.4. The example J.1 confirms 1/8 in for 1/4 in.
    CHECK(steel::minimum_leg_in(0.25) == 0.125);
    CHECK(steel::minimum_leg_in(0.375) == 0.1875);
    CHECK(steel::minimum_leg_in(0.625) == 0.25);
    CHECK(steel::minimum_leg_in(1.0) == 0.3125);
}

TEST_CASE("A leg is enough by either column of the table", "[published]") {
    // AISC 360 Table J2.4, read in public text; its SI column is rounded: 3, 5, 6 and 8 mm.
    CHECK(steel::is_minimum_leg(0.125, 0.25));
    CHECK(steel::is_minimum_leg(3.0 / 25.4, 0.1875));
    CHECK_FALSE(steel::is_minimum_leg(0.11, 0.1875));
    CHECK(steel::is_minimum_leg(0.1875, 0.375));
    CHECK_FALSE(steel::is_minimum_leg(0.125, 0.375));
    CHECK(steel::is_minimum_leg(6.0 / 25.4, 0.625));
    CHECK_FALSE(steel::is_minimum_leg(0.1875, 0.625));
    CHECK_FALSE(steel::is_minimum_leg(0.25, 1.0));
    CHECK(steel::is_minimum_leg(0.3125, 1.0));
}

TEST_CASE("Section moduli of the weld line are those of its outline", "[closed-form]") {
    for (const double width : {1.0, 2.0, 3.5}) {
        for (const double depth : {1.0, 2.5, 4.0}) {
            const steel::WeldLine line = steel::rectangular_weld(width, depth);
            INFO("width " << width << " depth " << depth);
            CHECK_CLOSE(line.section_x_in2, outline_second_moment(width, depth) / (0.5 * depth), 1e-7, 0.0);
            CHECK_CLOSE(line.section_y_in2, outline_second_moment(depth, width) / (0.5 * width), 1e-7, 0.0);
            CHECK_CLOSE(line.length_in, 2.0 * (width + depth), 1e-12, 0.0);
        }
    }
    // A ring: integral of (r sin a)^2 r da = pi r^3, over r.
    const steel::WeldLine ring = steel::circular_weld(3.0);
    CHECK_CLOSE(ring.section_x_in2, std::numbers::pi * 1.5 * 1.5, 1e-12, 0.0);
    CHECK_CLOSE(ring.length_in, std::numbers::pi * 3.0, 1e-12, 0.0);
}

TEST_CASE("Corners of a rectangle add their bending, a ring feels the resultant", "[closed-form]") {
    const steel::WeldLine square = steel::rectangular_weld(2.0, 2.0);  // S = 4 + 4/3
    CHECK_CLOSE(steel::bending_lb_per_in(square, {8400.0, 0.0, 0.0, 0.0}), 1575.0, 1e-12, 0.0);
    CHECK_CLOSE(steel::bending_lb_per_in(square, {-8400.0, 8400.0, 0.0, 0.0}), 3150.0, 1e-12, 0.0);
    const steel::WeldLine ring = steel::circular_weld(2.0);  // S = pi
    CHECK_CLOSE(steel::bending_lb_per_in(ring, {300.0, 400.0, 0.0, 0.0}), 500.0 / std::numbers::pi, 1e-12, 0.0);
    // 1575 + 80/8 along the post, 200/8 across it.
    CHECK_CLOSE(steel::resultant_lb_per_in(square, {8400.0, 0.0, 200.0, -80.0}), std::hypot(1585.0, 25.0), 1e-12, 0.0);
}
