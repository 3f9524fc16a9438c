// Bearing areas under washers and backing plates against hand arithmetic.
#include "resistance/wood/washer_bearing.h"

#include "support/compare.h"

using namespace toehold::resistance;

TEST_CASE("A bolt's hole in wood is taken 1/16 in larger than the bolt", "[published]") {
    CHECK(bolt_hole_in_wood_in(0.5) == 0.5625);
}

TEST_CASE("A washer wholly on the wood bears on its ring", "[closed-form]") {
    // pi/4 (2^2 - 0.5625^2) = 3.14159 - 0.24850
    const BearingArea area = washer_bearing(2.0, 0.5625, {5.25, 1.75});
    CHECK_CLOSE(area.area_in2, 2.89309, 0.0, 1e-5);
    CHECK(area.along_in == 2.0);
}

TEST_CASE("A washer that overhangs the edge bears only evenly about the bolt", "[closed-form]") {
    // 0.75 in to the edge: ring of 1.5 in: pi/4 (2.25 - 0.31640625) = 1.51864
    CHECK_CLOSE(washer_bearing(2.0, 0.5625, {5.25, 0.75}).area_in2, 1.51864, 0.0, 1e-5);
    CHECK_CLOSE(washer_bearing(2.0, 0.5625, {0.75, 5.25}).area_in2, 1.51864, 0.0, 1e-5);
}

TEST_CASE("A backing plate is cut to the wood on both sides alike", "[closed-form]") {
    // 4 along x 4 across on a 3.5 in wide block, bolt 1.5 in from one edge: 4 x 3 - 0.24850
    const BearingArea area = plate_bearing(4.0, 4.0, 0.5625, {5.25, 1.5});
    CHECK(area.along_in == 4.0);
    CHECK(area.across_in == 3.0);
    CHECK_CLOSE(area.area_in2, 11.75150, 0.0, 1e-5);
}

TEST_CASE("No wood, no area", "[bad-input]") {
    CHECK(washer_bearing(2.0, 0.5625, {5.0, 0.1}).area_in2 == 0.0);
    CHECK(plate_bearing(4.0, 4.0, 0.5625, {-1.0, 1.0}).area_in2 == 0.0);
}

TEST_CASE("A plate spreads pressure as far as its bending allows", "[closed-form]") {
    // t = 1/4 in, 36,000 / 1.67 = 21,557 psi, p = 500 psi: c = 0.25 sqrt(21557 / 1500) = 0.9477 in. Its strip then
    // carries p c^2 / 2 = 224.55 = 21,557 x 0.25^2 / 6 lb in per in.
    const double spread_in = plate_spread_in(0.25, 36000.0 / 1.67, 500.0);
    CHECK_CLOSE(spread_in, 0.9477, 0.0, 1e-4);
    CHECK_CLOSE(500.0 * spread_in * spread_in / 2.0, 224.55, 1e-4, 0.0);
}
