// Round washers against the annular plate in closed form, from below and from above, and by hand.
#include "resistance/steel/washer.h"

#include "support/compare.h"

#include <cmath>
#include <numbers>

using namespace toehold::resistance::steel;

namespace {

const RoundWasher wide{3.0, 0.5625, 0.75, 0.25};

double circle_in2(double diameter_in) { return 0.25 * std::numbers::pi * diameter_in * diameter_in; }

}  // namespace

TEST_CASE("A 3 x 1/4 in round washer on a 1/2 in bolt folds at about 3,940 lb", "[closed-form]") {
    // b = 1.5, h = 0.28125, a = 0.375; m = 36000/1.67 x 0.0625/4 = 336.83 lb. 2 (b - h) m = 821.0;
    // (2/3)(3.375 - 0.02225) - (2.25 - 0.0791)(0.375) = 1.42108; p = 577.7 psi on 6.8201 in2.
    const double limit_psi = washer_limit_psi(wide, 36000.0 / 1.67);
    CHECK_CLOSE(limit_psi, 577.7, 0.0, 0.1);
    CHECK_CLOSE(limit_psi * (circle_in2(3.0) - circle_in2(0.5625)), 3940.0, 0.0, 1.0);
}

TEST_CASE("The washer's limit is both a field in balance and a cone that folds", "[closed-form]") {
    const double plastic = 336.83, available_psi = plastic * 4.0 / (0.25 * 0.25);
    const double b = 1.5, h = 0.28125, a = 0.375, p = washer_limit_psi(wide, available_psi);
    // From below: the moment around is m everywhere, and d(r M_r)/dr = m + V with V the shear on a ring over 2 pi. M_r
    // must vanish at the outer edge and stay within m.
    constexpr int rings = 20000;
    double radial = 0.0, largest = 0.0;
    const double step = (b - h) / rings;
    for (int ring = 0; ring < rings; ++ring) {
        const double r = h + (ring + 0.5) * step;
        const double shear = 0.5 * p * (r * r - h * h) - (r > a ? 0.5 * p * (b * b - h * h) : 0.0);
        radial += (plastic + shear) * step;
        largest = std::max(largest, std::abs(radial) / r);
    }
    CHECK_CLOSE(radial, 0.0, 0.0, 2e-3 * plastic);
    CHECK(largest <= plastic);
    // From above: a cone of slope 1 about the nut's ring. Work inside 2 pi m (b - h), outside by the pressure.
    double outside = 0.0;
    for (int ring = 0; ring < rings; ++ring) {
        const double r = h + (ring + 0.5) * step;
        outside += p * (r - a) * 2.0 * std::numbers::pi * r * step;
    }
    CHECK_CLOSE(outside, 2.0 * std::numbers::pi * plastic * (b - h), 1e-6, 0.0);
}

TEST_CASE("Only the part of a thin washer counts that the pressure does not fold", "[property]") {
    const double available_psi = 36000.0 / 1.67;
    RoundWasher thin = wide;
    thin.thickness_in = 0.125;
    const double reach_in = washer_reach_in(thin, available_psi, 425.0);
    CHECK(reach_in < 3.0);
    CHECK(reach_in > 0.75);
    thin.outside_in = reach_in;
    CHECK_CLOSE(washer_limit_psi(thin, available_psi), 425.0, 1e-6, 0.0);
    CHECK(washer_reach_in(wide, available_psi, 425.0) == 3.0);
    // Within the nut nothing bends.
    CHECK(std::isinf(washer_limit_psi({0.7, 0.5625, 0.75, 0.1}, available_psi)));
}
