#include "resistance/steel/weld_line.h"

#include <cmath>
#include <numbers>

namespace toehold::resistance::steel {

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
