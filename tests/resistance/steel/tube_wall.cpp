// A tube's wall under a washer, held to the patterns of yield lines it stands for.
#include "resistance/steel/tube_wall.h"

#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace toehold::resistance::steel;

namespace {

constexpr double yield_psi = 46000.0, wall_in = 0.174375;
constexpr double unit_lb = yield_psi * wall_in * wall_in;

/// Square of side c in a wall of width B clamped at its sides, lines a distance x past the square, least over x: the
/// side pieces turn 1/g over c + 2 x twice, the end pieces 1/x over B twice, each with m = F_y t^2/4.
double least_of_straight_lines_lb(double width_in, double square_in) {
    const double m = 0.25 * unit_lb, g = 0.5 * (width_in - square_in);
    double least = 1e12;
    for (int i = 1; i < 4000; ++i) {
        const double x = 0.001 * i * width_in;
        least = std::min(least, 4.0 * m * (square_in + 2.0 * x) / g + 4.0 * m * width_in / x);
    }
    return least;
}

}  // namespace

TEST_CASE("a wide spot yields the wall along straight lines", "[second-method]") {
    // 1.6 in on 2 in: the square of its area is 1.41796 in wide.
    CHECK_CLOSE(pressed_wall_lb(2.0, wall_in, 1.6, yield_psi), least_of_straight_lines_lb(2.0, 1.41796), 1e-4, 0.0);
}

TEST_CASE("a small spot yields the wall in a fan", "[closed-form]") {
    CHECK_CLOSE(pressed_wall_lb(2.0, wall_in, 0.75, yield_psi), std::numbers::pi * unit_lb / 0.625, 1e-9, 0.0);
    CHECK(pressed_wall_lb(2.0, wall_in, 0.75, yield_psi) < least_of_straight_lines_lb(2.0, 0.886227 * 0.75));
}

TEST_CASE("a spot as wide as the wall counts as 0.85 of it", "[unit]") {
    CHECK(pressed_wall_lb(2.0, wall_in, 2.5, yield_psi) == pressed_wall_lb(2.0, wall_in, 1.7, yield_psi));
}
