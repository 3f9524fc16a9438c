// A limit met exactly holds in every unit, and one missed by a thousandth of an inch does not.
#include "units/limit.h"
#include "units/quantity.h"

#include <catch2/catch.hpp>

using toehold::units::at_least;
using toehold::units::at_most;

TEST_CASE("1 3/4 in meets 44.45 mm from either side", "[unit][A18]") {
    // 44.45 / 25.4 is not 1.75 in binary, nor are 4 x 7/16 in and 4 x 11.1125 mm the same double.
    const double in = 1.75, from_mm = 44.45 / 25.4;
    CHECK(at_least(in, from_mm));
    CHECK(at_least(from_mm, in));
    CHECK(at_most(in, from_mm));
    CHECK(at_most(from_mm, in));
    CHECK(at_least(4.0 * (11.1125 / 25.4), 4.0 * 0.4375));
}

TEST_CASE("a thousandth of an inch is told, and nothing is less than nothing", "[unit]") {
    CHECK_FALSE(at_least(1.749, 1.75));
    CHECK_FALSE(at_most(1.751, 1.75));
    CHECK(at_least(1.75 * (1.0 - 0.9e-6), 1.75));
    CHECK_FALSE(at_least(1.75 * (1.0 - 2e-6), 1.75));
    CHECK(at_least(0.0, 0.0));
    CHECK_FALSE(at_least(-0.01, 0.0));
}
