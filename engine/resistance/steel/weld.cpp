#include "resistance/steel/weld.h"

#include <cmath>
#include <numbers>

namespace toehold::resistance::steel {

double throat_in(double leg_in) { return 0.707 * leg_in; }

double weld_metal_lb_per_in(double leg_in, double electrode_psi) { return 0.60 * electrode_psi * throat_in(leg_in); }

double base_metal_lb_per_in(double thickness_in, double ultimate_psi) { return 0.60 * ultimate_psi * thickness_in; }

double minimum_leg_in(double thinner_part_in) {
    if (thinner_part_in <= 0.25) return 0.125;
    if (thinner_part_in <= 0.5) return 0.1875;
    if (thinner_part_in <= 0.75) return 0.25;
    return 0.3125;
}

WeldLine rectangular_weld(double width_in, double depth_in) {
    return {WeldShape::rectangle, 2.0 * (width_in + depth_in), width_in * depth_in + depth_in * depth_in / 3.0,
            width_in * depth_in + width_in * width_in / 3.0};
}

WeldLine circular_weld(double diameter_in) {
    const double section_in2 = 0.25 * std::numbers::pi * diameter_in * diameter_in;
    return {WeldShape::circle, std::numbers::pi * diameter_in, section_in2, section_in2};
}

double bending_lb_per_in(const WeldLine& line, const WeldForces& forces) {
    const double from_x = std::abs(forces.moment_x_lb_in) / line.section_x_in2;
    const double from_y = std::abs(forces.moment_y_lb_in) / line.section_y_in2;
    return line.shape == WeldShape::circle ? std::hypot(from_x, from_y) : from_x + from_y;
}

double resultant_lb_per_in(const WeldLine& line, const WeldForces& forces) {
    const double along_post = bending_lb_per_in(line, forces) + std::abs(forces.axial_lb) / line.length_in;
    return std::hypot(along_post, forces.shear_lb / line.length_in);
}

}  // namespace toehold::resistance::steel
