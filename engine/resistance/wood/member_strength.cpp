#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <stdexcept>

namespace toehold::resistance {
namespace {

void require_section(double breadth_in, double depth_in) {
    if (!(breadth_in > 0.0 && depth_in > 0.0)) throw std::invalid_argument("a section needs sides above 0");
}

}  // namespace

double section_modulus_in3(double breadth_in, double depth_in) {
    require_section(breadth_in, depth_in);
    return breadth_in * depth_in * depth_in / 6.0;
}

double bending_stress_psi(double moment_lb_in, double breadth_in, double depth_in) {
    return std::abs(moment_lb_in) / section_modulus_in3(breadth_in, depth_in);
}

double shear_at_fasteners_lb(double shear_psi, double breadth_in, double depth_in, double reached_in) {
    require_section(breadth_in, depth_in);
    const double part = std::clamp(reached_in, 0.0, depth_in) / depth_in;
    return shear_at_inner_fasteners_lb(shear_psi, breadth_in, depth_in, reached_in) * part * part;
}

double shear_at_inner_fasteners_lb(double shear_psi, double breadth_in, double depth_in, double reached_in) {
    require_section(breadth_in, depth_in);
    return 2.0 / 3.0 * shear_psi * breadth_in * std::clamp(reached_in, 0.0, depth_in);
}

double needed_reach_in(double shear_lb, double shear_psi, double breadth_in, double depth_in) {
    const double whole_lb = shear_at_fasteners_lb(shear_psi, breadth_in, depth_in, depth_in);
    if (!(whole_lb > 0.0)) throw std::invalid_argument("an allowable shear stress must be above 0");
    return depth_in * std::cbrt(std::abs(shear_lb) / whole_lb);
}

double torsion_coefficient(double sides) {
    if (!(sides >= 1.0)) throw std::invalid_argument("the longer side over the shorter is at least 1");
    constexpr double pi = std::numbers::pi;
    constexpr double odd_fifth_powers = 1.00452376279513961613;  // sum of 1/n^5 over odd n, 31/32 zeta(5)
    constexpr double lost = 1e-20;                               // beside 1
    // tanh x = 1 - 2 q^(2n)/(1 + q^(2n)) and 1/cosh x = 2 q^n/(1 + q^(2n)) at x = n pi sides/2: what is left to sum
    // falls by q^2 < 1/23 a term.
    const double q = std::exp(-0.5 * pi * sides);
    double stiffness_sum = odd_fifth_powers, stress_sum = 0.0, power = q;
    int n = 1;
    while (power > lost) {
        const double square = n * n, one_and = 1.0 + power * power;
        stiffness_sum -= 2.0 * power * power / (one_and * square * square * n);
        stress_sum += 2.0 * power / (one_and * square);
        n += 2;
        power *= q * q;
    }
    const double stiffness = (1.0 - 192.0 / (std::pow(pi, 5) * sides) * stiffness_sum) / 3.0;
    return stiffness / (1.0 - 8.0 / (pi * pi) * stress_sum);
}

double torsion_modulus_in3(double side_in, double other_side_in) {
    require_section(side_in, other_side_in);
    const double longer = std::max(side_in, other_side_in), shorter = std::min(side_in, other_side_in);
    return torsion_coefficient(longer / shorter) * longer * shorter * shorter;
}

double torsion_constant_in4(double side_in, double other_side_in) {
    const double a = std::max(side_in, other_side_in), b = std::min(side_in, other_side_in);
    const double part = b / a;
    return a * b * b * b * (1.0 / 3.0 - 0.21 * part * (1.0 - part * part * part * part / 12.0));
}

double shear_torsion_ratio(double shear_psi, double torsion_psi, double allowable_shear_psi) {
    if (!(allowable_shear_psi > 0.0)) throw std::invalid_argument("an allowable shear stress must be above 0");
    const double shear = shear_psi / allowable_shear_psi;
    return torsion_psi / allowable_shear_psi + shear * shear;
}

double shear_torsion_share(double shear_psi, double torsion_psi, double allowable_shear_psi) {
    if (!(allowable_shear_psi > 0.0)) throw std::invalid_argument("an allowable shear stress must be above 0");
    const double shear = shear_psi / allowable_shear_psi, torsion = torsion_psi / allowable_shear_psi;
    return 0.5 * (torsion + std::sqrt(torsion * torsion + 4.0 * shear * shear));
}

double shear_torsion_ratio_linear(double shear_psi, double torsion_psi, double allowable_shear_psi) {
    if (!(allowable_shear_psi > 0.0)) throw std::invalid_argument("an allowable shear stress must be above 0");
    return shear_psi / allowable_shear_psi + torsion_psi / (two_thirds() * allowable_shear_psi);
}

double lifting_reach_in(double depth_in) {
    if (!(depth_in > 0.0)) throw std::invalid_argument("a member's depth must be above 0");
    return 0.5 * depth_in;
}

double biaxial_bending_ratio(const BiaxialBending& bending) {
    if (!(bending.edgewise_allowable_psi > 0.0 && bending.flatwise_allowable_psi > 0.0)) {
        throw std::invalid_argument("allowable bending stresses must be above 0");
    }
    const double nearness = bending.critical_psi > 0.0 ? bending.edgewise_psi / bending.critical_psi : 0.0;
    if (nearness >= 1.0) return std::numeric_limits<double>::infinity();
    return bending.edgewise_psi / bending.edgewise_allowable_psi +
           bending.flatwise_psi / (bending.flatwise_allowable_psi * (1.0 - nearness * nearness));
}

}  // namespace toehold::resistance
