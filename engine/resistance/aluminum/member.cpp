#include "resistance/aluminum/member.h"

#include <algorithm>
#include <cmath>

namespace toehold::resistance::aluminum {

Moment plate_moment(double width_in, double thickness_in, const Strengths& strengths) {
    const double square = width_in * thickness_in * thickness_in;
    const double plastic_in3 = square / 4.0;
    const double section_in3 = square / 6.0;
    return {strengths.yield_psi * std::min(plastic_in3, 1.5 * section_in3), strengths.ultimate_psi * plastic_in3};
}

Moment tube_moment(double section_in3, double plastic_in3, const Strengths& strengths) {
    return {strengths.yield_psi * section_in3, strengths.ultimate_psi * plastic_in3};
}

double flat_wall_limit(double yield_psi, double modulus_psi) {
    // Table B.4.2: Bp = Fy (1 + (Fy/1500 ksi)^(1/3)), Dp = Bp/10 (Bp/E)^(1/2).
    const double intercept = yield_psi * (1.0 + std::cbrt(yield_psi / 1.5e6));
    const double slope = intercept / 10.0 * std::sqrt(intercept / modulus_psi);
    return (intercept - yield_psi) / (1.6 * slope);
}

double round_wall_limit(double yield_psi, double modulus_psi) {
    // Table B.4.2: Bt = Fy (1 + (Fy/50,000 ksi)^(1/5)), Dt = Bt/4.5 (Bt/E)^(1/3).
    const double intercept = yield_psi * (1.0 + std::pow(yield_psi / 5.0e7, 0.2));
    const double slope = intercept / 4.5 * std::cbrt(intercept / modulus_psi);
    const double root = (intercept - yield_psi) / slope;
    return root * root;
}

bool walls_reach_yield(const steel::TubeShape& tube, double yield_psi, double modulus_psi) {
    if (tube.round)
        return 0.5 * (tube.width_in - tube.wall_in) / tube.wall_in <= round_wall_limit(yield_psi, modulus_psi);
    const double widest_in = std::max(tube.width_in, tube.depth_in) - 2.0 * tube.wall_in;
    return widest_in / tube.wall_in <= flat_wall_limit(yield_psi, modulus_psi);
}

double flagpole_axial_lb(const steel::TubeSection& section, double height_in, double welded_yield_psi,
                         double modulus_psi) {
    constexpr double straightness = 0.85;
    return straightness * steel::flagpole_axial_lb(section, height_in, welded_yield_psi, modulus_psi);
}

}  // namespace toehold::resistance::aluminum
