#include "resistance/aluminum/bar.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::resistance::aluminum {
namespace {
constexpr double pi = std::numbers::pi;
}

double bar_critical_moment_lb_in(double thickness_in, double depth_in, double unbraced_in, double modulus_psi) {
    constexpr double twice_one_and_poisson = 2.66;
    const double cube = thickness_in * thickness_in * thickness_in * depth_in;
    const double weak_in4 = cube / 12.0;
    // Saint-Venant's torsion constant of a rectangle, to 4 % for a square.
    const double torsion_in4 = cube / 3.0 * (1.0 - 0.63 * thickness_in / depth_in);
    return pi / unbraced_in * modulus_psi * std::sqrt(weak_in4 * torsion_in4 / twice_one_and_poisson);
}

double bar_lateral_moment_lb_in(double thickness_in, double depth_in, double unbraced_in, double plastic_lb_in,
                                double yield_psi, double modulus_psi) {
    if (!(unbraced_in > 0.0)) return plastic_lb_in;
    // Table B.4.2: Bc = Fy (1 + (Fy/2250 ksi)^(1/2)), Dc = Bc/10 (Bc/E)^(1/2), Cc = 0.41 Bc/Dc.
    const double intercept = yield_psi * (1.0 + std::sqrt(yield_psi / 2.25e6));
    const double slope = intercept / 10.0 * std::sqrt(intercept / modulus_psi);
    const double meeting = 0.41 * intercept / slope;
    const double section_in3 = thickness_in * depth_in * depth_in / 6.0;
    const double critical = bar_critical_moment_lb_in(thickness_in, depth_in, unbraced_in, modulus_psi);
    const double slenderness = pi * std::sqrt(modulus_psi * section_in3 / critical);
    if (slenderness >= meeting) return std::min(plastic_lb_in, critical);
    const double at_meeting = pi * pi * modulus_psi * section_in3 / (meeting * meeting);
    return std::min(plastic_lb_in, plastic_lb_in * (1.0 - slenderness / meeting) + at_meeting * slenderness / meeting);
}

}  // namespace toehold::resistance::aluminum
