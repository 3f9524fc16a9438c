// The pressed part of a width, the cubic's sign changes, the rule of integration: against sums and algebra.
#include "mechanics/side_post/pressed_strip.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>

using namespace toehold::mechanics::side_post;

namespace {

/// max(0, closing)^2/2 and its pressure over the width, added up in narrow strips by their middles.
struct Summed {
    double energy = 0.0, force = 0.0, moment = 0.0, pressed = 0.0;
};

Summed summed(double left, double right) {
    constexpr int strips = 200000;
    Summed sum;
    for (int i = 0; i < strips; ++i) {
        const double s = (i + 0.5) / strips, closing = std::max(0.0, left + s * (right - left));
        sum.energy += 0.5 * closing * closing / strips;
        sum.force += closing / strips;
        sum.moment += closing * s / strips;
        sum.pressed += closing > 0.0 ? 1.0 / strips : 0.0;
    }
    return sum;
}

}  // namespace

TEST_CASE("Energy and pressure across the width are those of narrow strips", "[closed-form]") {
    for (const auto& [left, right] : {std::pair{0.3, 0.1}, std::pair{0.3, -0.1}, std::pair{-0.2, 0.5},
                                      std::pair{0.0, 0.4}, std::pair{-0.1, -0.3}, std::pair{0.2, 0.2}}) {
        CAPTURE(left, right);
        const Summed sum = summed(left, right);
        CHECK_CLOSE(strip_energy(left, right, false).value, sum.energy, 1e-6, 1e-12);
        const StripPressure pressure = strip_pressure(left, right);
        CHECK_CLOSE(pressure.force, sum.force, 1e-6, 1e-12);
        CHECK_CLOSE(pressure.force * pressure.center, sum.moment, 1e-6, 1e-12);
        CHECK_CLOSE(pressure.pressed, sum.pressed, 0.0, 1e-5);
    }
}

TEST_CASE("Derivatives of the strip's energy are those of its differences, one way and two", "[property]") {
    constexpr double step = 1e-6;
    for (const bool two_way : {false, true}) {
        for (const auto& [left, right] :
             {std::pair{0.3, 0.1}, std::pair{0.3, -0.1}, std::pair{-0.2, 0.5}, std::pair{-0.1, -0.3}}) {
            CAPTURE(left, right, two_way);
            const StripEnergy at = strip_energy(left, right, two_way);
            const StripEnergy more_left = strip_energy(left + step, right, two_way),
                              less_left = strip_energy(left - step, right, two_way);
            const StripEnergy more_right = strip_energy(left, right + step, two_way),
                              less_right = strip_energy(left, right - step, two_way);
            CHECK_CLOSE(at.by_left, (more_left.value - less_left.value) / (2.0 * step), 1e-7, 1e-9);
            CHECK_CLOSE(at.by_right, (more_right.value - less_right.value) / (2.0 * step), 1e-7, 1e-9);
            CHECK_CLOSE(at.by_left_left, (more_left.by_left - less_left.by_left) / (2.0 * step), 1e-7, 1e-9);
            CHECK_CLOSE(at.by_left_right, (more_right.by_left - less_right.by_left) / (2.0 * step), 1e-7, 1e-9);
            CHECK_CLOSE(at.by_right_right, (more_right.by_right - less_right.by_right) / (2.0 * step), 1e-7, 1e-9);
        }
    }
}

// (s - .2)(s - .5)(s - .9); s^2 - .25 (twice tangent to nothing); (s - .4)^2, which touches and does not change sign.
TEST_CASE("A cubic's sign changes are found between the bounds", "[closed-form]") {
    const auto through = [](auto f) { return Cubic({f(0.0), f(1.0 / 3.0), f(2.0 / 3.0), f(1.0)}); };
    const Cubic three = through([](double s) { return (s - 0.2) * (s - 0.5) * (s - 0.9); });
    const std::vector<double> all = three.sign_changes(0.0, 1.0);
    REQUIRE(all.size() == 3);
    CHECK_CLOSE(all[0], 0.2, 0.0, 1e-12);
    CHECK_CLOSE(all[1], 0.5, 0.0, 1e-12);
    CHECK_CLOSE(all[2], 0.9, 0.0, 1e-12);
    CHECK(three.sign_changes(0.3, 0.8).size() == 1);
    CHECK_CLOSE(three.at(0.35), 0.15 * -0.15 * -0.55, 1e-12, 0.0);
    CHECK(through([](double s) { return s * s - 0.25; }).sign_changes(0.0, 1.0).size() == 1);
    CHECK(through([](double s) { return (s - 0.4) * (s - 0.4) + 1e-9; }).sign_changes(0.0, 1.0).empty());
    CHECK(through([](double) { return 1.0; }).sign_changes(0.0, 1.0).empty());
    CHECK(through([](double s) { return 2.0 * s - 1.5; }).sign_changes(0.0, 1.0).size() == 1);
}

// Eight points of Gauss integrate every power up to the fifteenth.
TEST_CASE("The rule integrates powers up to the fifteenth over each stretch", "[closed-form]") {
    const Cubic open({1.0, 1.0, 1.0, 1.0}), changes({-0.3, -0.3 + 1.0 / 3.0, -0.3 + 2.0 / 3.0, 0.7});
    const std::vector<RulePoint> points = rule_points(open, changes, 0.1, 0.9);
    CHECK(points.size() == 16);
    for (int power = 0; power <= 15; ++power) {
        double sum = 0.0;
        for (const RulePoint& point : points) sum += point.weight * std::pow(point.at, power);
        CHECK_CLOSE(sum, (std::pow(0.9, power + 1) - std::pow(0.1, power + 1)) / (power + 1), 1e-13, 0.0);
    }
}
