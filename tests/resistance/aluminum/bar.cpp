// Flat bars of aluminum: Aluminum Design Manual 2020 F.4, from memory, to be confirmed.
#include "resistance/aluminum/bar.h"

#include "support/compare.h"

#include <cmath>
#include <numbers>

using namespace toehold;
using namespace toehold::resistance;

namespace {
constexpr double modulus_psi = 10.1e6;
}

// Timoshenko, narrow rectangle under uniform moment: pi/L root(E Iy G J). 1/2 x 2 1/2 in, 42 in: Iy 0.026042, J =
// 0.104167 (1 - 0.126) = 0.091042 in4, G = 3.797e6: 22,555 lb in.
TEST_CASE("The elastic critical moment of a flat bar", "[closed-form]") {
    CHECK_CLOSE(aluminum::bar_critical_moment_lb_in(0.5, 2.5, 42.0, modulus_psi), 22554.6, 1e-5, 0.0);
    CHECK_CLOSE(aluminum::bar_critical_moment_lb_in(0.5, 2.5, 84.0, modulus_psi), 11277.3, 1e-5, 0.0);
}

// 6061-T6: Bc = 35 (1 + root(35/2250)) = 39.37 ksi, Dc = 3.937 root(39.37/10,100) = 0.2458, Cc = 0.41 x 39.37/0.2458 =
// 65.7 (66 in the manual's tables).
TEST_CASE("A flat bar goes from its plastic moment to the elastic curve at Cc", "[memory]") {
    const double plastic = 35e3 * 0.5 * 2.5 * 2.5 / 4.0;
    const double section_in3 = 0.5 * 2.5 * 2.5 / 6.0;
    CHECK(aluminum::bar_lateral_moment_lb_in(0.5, 2.5, 0.0, plastic, 35e3, modulus_psi) == plastic);
    const double at_cc = std::numbers::pi * std::numbers::pi * modulus_psi * section_in3 / (65.68 * 65.68);
    const double length_in = 42.0 * 22554.6 / at_cc;
    CHECK_CLOSE(aluminum::bar_lateral_moment_lb_in(0.5, 2.5, 0.999 * length_in, plastic, 35e3, modulus_psi), at_cc,
                0.01, 0.0);
    CHECK_CLOSE(aluminum::bar_lateral_moment_lb_in(0.5, 2.5, 1.1 * length_in, plastic, 35e3, modulus_psi), at_cc / 1.1,
                0.002, 0.0);
    // 42 in: slenderness pi root(10.1e6 x 0.52083/22,554.6) = 47.978; Cc 65.673: 27,344 (1 - 0.73056) + 12,037 x
    // 0.73056.
    CHECK_CLOSE(aluminum::bar_lateral_moment_lb_in(0.5, 2.5, 42.0, plastic, 35e3, modulus_psi), 16161.8, 1e-5, 0.0);
}
