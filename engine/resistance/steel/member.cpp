#include "resistance/steel/member.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::resistance::steel {
namespace {

/// Mp less the share of (Mp - Fy S) that `reach` gives, never above Mp.
double reduced(double plastic, double yielding, double reach) {
    return plastic - (plastic - yielding) * std::max(0.0, reach);
}

/// Eq. F7-3: the elastic modulus less the buckled middle of both flanges.
double effective_modulus_in3(const RectangularFlexure& tube, double lost_in) {
    const double depth_in = tube.web_flat_in + 3.0 * tube.wall_in;
    const double wall_in = tube.wall_in, arm_in = 0.5 * (depth_in - wall_in);
    const double lost_in4 = lost_in * wall_in * (wall_in * wall_in / 12.0 + arm_in * arm_in);
    return tube.section_in3 - 2.0 * lost_in4 / (0.5 * depth_in);
}

double lateral_torsional(const RectangularFlexure& tube, double plastic, double yield_psi, double modulus_psi) {
    const double torsion_area = std::sqrt(tube.torsion_in4 * tube.area_in2);
    const double plastic_length_in = 0.13 * modulus_psi * tube.other_radius_in * torsion_area / plastic;
    const double elastic_moment = 0.7 * yield_psi * tube.section_in3;
    const double elastic_length_in = 2.0 * modulus_psi * tube.other_radius_in * torsion_area / elastic_moment;
    if (tube.unbraced_in <= plastic_length_in) return plastic;
    if (tube.unbraced_in > elastic_length_in)
        return 2.0 * modulus_psi * tube.other_radius_in * torsion_area / tube.unbraced_in;
    const double reach = (tube.unbraced_in - plastic_length_in) / (elastic_length_in - plastic_length_in);
    return plastic - (plastic - elastic_moment) * reach;
}

}  // namespace

double plate_moment_lb_in(double width_in, double thickness_in, double yield_psi) {
    const double square = width_in * thickness_in * thickness_in;
    return yield_psi * std::min(square / 4.0, 1.6 * square / 6.0);
}

double effective_wall_in(double flat_in, double wall_in, double yield_psi, double modulus_psi) {
    const double root = std::sqrt(modulus_psi / yield_psi);
    const double slenderness = flat_in / wall_in;
    if (slenderness <= 1.40 * root) return flat_in;
    return std::min(flat_in, 1.92 * wall_in * root * (1.0 - 0.38 * root / slenderness));
}

std::optional<double> rectangular_tube_moment_lb_in(const RectangularFlexure& tube, double yield_psi,
                                                    double modulus_psi) {
    const double root = std::sqrt(modulus_psi / yield_psi);
    const double flange = tube.flange_flat_in / tube.wall_in;
    const double web = tube.web_flat_in / tube.wall_in;
    // Table B4.1b cases 17 and 19.
    if (web > 5.70 * root) return std::nullopt;
    const double plastic = yield_psi * tube.plastic_in3;
    const double yielding = yield_psi * tube.section_in3;
    double moment = plastic;
    if (flange > 1.40 * root) {
        const double works_in = effective_wall_in(tube.flange_flat_in, tube.wall_in, yield_psi, modulus_psi);
        moment = std::min(moment, yield_psi * effective_modulus_in3(tube, tube.flange_flat_in - works_in));
    } else if (flange > 1.12 * root) {
        moment = std::min(moment, reduced(plastic, yielding, 3.57 * flange / root - 4.0));
    }
    if (web > 2.42 * root) moment = std::min(moment, reduced(plastic, yielding, 0.305 * web / root - 0.738));
    if (tube.about_stronger_axis) moment = std::min(moment, lateral_torsional(tube, plastic, yield_psi, modulus_psi));
    return moment;
}

std::optional<double> round_tube_moment_lb_in(double diameter_in, double wall_in, double section_in3,
                                              double plastic_in3, double yield_psi, double modulus_psi) {
    const double slenderness = diameter_in / wall_in;
    const double stiffness = modulus_psi / yield_psi;
    // Table B4.1b case 20, and the limit of F8.
    if (slenderness >= 0.45 * stiffness) return std::nullopt;
    const double plastic = yield_psi * plastic_in3;
    if (slenderness <= 0.07 * stiffness) return plastic;
    if (slenderness <= 0.31 * stiffness)
        return std::min(plastic, (0.021 * modulus_psi / slenderness + yield_psi) * section_in3);
    return 0.33 * modulus_psi / slenderness * section_in3;
}

double buckling_stress_psi(double slenderness, double yield_psi, double modulus_psi) {
    const double elastic_psi = std::numbers::pi * std::numbers::pi * modulus_psi / (slenderness * slenderness);
    if (yield_psi / elastic_psi <= 2.25) return std::pow(0.658, yield_psi / elastic_psi) * yield_psi;
    return 0.877 * elastic_psi;
}

double moment_share_beside_axial(double axial_ratio) {
    if (axial_ratio < 0.2) return 1.0 - 0.5 * axial_ratio;
    return std::max(0.0, 9.0 / 8.0 * (1.0 - axial_ratio));
}

}  // namespace toehold::resistance::steel
