#include "resistance/steel/tube.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::resistance::steel {
namespace {

constexpr double pi = std::numbers::pi;
constexpr double flagpole_length_factor = 2.1;  // AISC 360-16 Commentary Table C-A-7.1, case (e)

struct Solid {
    double area = 0.0, inertia = 0.0, plastic = 0.0;  ///< about the axis square to `depth`
};

/// A solid rectangle with rounded corners: the full rectangle less four corner pieces. A piece is what a quarter circle
/// leaves of its square: area r^2 (1 - pi/4), centroid r (10 - 3 pi)/(12 - 3 pi) from the sides.
Solid rounded(double width, double depth, double radius) {
    const double piece = radius * radius * (1.0 - 0.25 * pi);
    const double place = 0.5 * depth - radius * (10.0 - 3.0 * pi) / (12.0 - 3.0 * pi);
    const double own_inertia = radius * radius * radius * radius * (1.0 / 3.0 - pi / 16.0 - 1.0 / (36.0 - 9.0 * pi));
    return {width * depth - 4.0 * piece,
            width * depth * depth * depth / 12.0 - 4.0 * (own_inertia + piece * place * place),
            width * depth * depth / 4.0 - 4.0 * piece * place};
}

}  // namespace

TubeSection rectangular_section(double width_in, double depth_in, double wall_in, double outside_radius_in) {
    const double inside_radius = std::max(0.0, outside_radius_in - wall_in);
    const double inside_width = width_in - 2.0 * wall_in;
    const double inside_depth = depth_in - 2.0 * wall_in;
    const Solid out_x = rounded(width_in, depth_in, outside_radius_in);
    const Solid out_y = rounded(depth_in, width_in, outside_radius_in);
    const Solid in_x = rounded(inside_width, inside_depth, inside_radius);
    const Solid in_y = rounded(inside_depth, inside_width, inside_radius);
    const double middle_width = width_in - wall_in;
    const double middle_depth = depth_in - wall_in;
    const double middle_radius = std::max(0.0, outside_radius_in - 0.5 * wall_in);
    const double enclosed = middle_width * middle_depth - middle_radius * middle_radius * (4.0 - pi);
    const double around = 2.0 * (middle_width + middle_depth) - 2.0 * middle_radius * (4.0 - pi);
    TubeSection section;
    section.area_in2 = out_x.area - in_x.area;
    section.inertia_x_in4 = out_x.inertia - in_x.inertia;
    section.inertia_y_in4 = out_y.inertia - in_y.inertia;
    section.section_x_in3 = section.inertia_x_in4 / (0.5 * depth_in);
    section.section_y_in3 = section.inertia_y_in4 / (0.5 * width_in);
    section.plastic_x_in3 = out_x.plastic - in_x.plastic;
    section.plastic_y_in3 = out_y.plastic - in_y.plastic;
    section.torsion_in4 = 4.0 * enclosed * enclosed * wall_in / around;
    return section;
}

TubeSection round_section(double diameter_in, double wall_in) {
    const double inside = diameter_in - 2.0 * wall_in;
    const double square = diameter_in * diameter_in;
    const double inside_square = inside * inside;
    TubeSection section;
    section.area_in2 = 0.25 * pi * (square - inside_square);
    section.inertia_x_in4 = pi / 64.0 * (square * square - inside_square * inside_square);
    section.inertia_y_in4 = section.inertia_x_in4;
    section.section_x_in3 = section.inertia_x_in4 / (0.5 * diameter_in);
    section.section_y_in3 = section.section_x_in3;
    section.plastic_x_in3 = (square * diameter_in - inside_square * inside) / 6.0;
    section.plastic_y_in3 = section.plastic_x_in3;
    section.torsion_in4 = 2.0 * section.inertia_x_in4;
    return section;
}

double design_wall_in(double nominal_wall_in, bool full_wall) {
    return full_wall ? nominal_wall_in : 0.93 * nominal_wall_in;
}

TubeSection section_as_drawn(const TubeShape& tube) {
    if (tube.round) return round_section(tube.width_in, tube.wall_in);
    return rectangular_section(tube.width_in, tube.depth_in, tube.wall_in, 0.0);
}

TubeSection design_section(const TubeShape& tube, bool full_wall) {
    const double wall_in = design_wall_in(tube.wall_in, full_wall);
    if (tube.round) return round_section(tube.width_in, wall_in);
    const double corner_in = std::min(2.0 * wall_in, 0.5 * std::min(tube.width_in, tube.depth_in));
    return rectangular_section(tube.width_in, tube.depth_in, wall_in, corner_in);
}

Moduli moduli(const TubeSection& section, BentAbout axis) {
    if (axis == BentAbout::x) return {section.section_x_in3, section.plastic_x_in3};
    return {section.section_y_in3, section.plastic_y_in3};
}

std::optional<double> tube_moment_lb_in(const TubeMember& tube, BentAbout axis) {
    const TubeSection section = design_section(tube.shape, tube.full_wall);
    const double wall_in = design_wall_in(tube.shape.wall_in, tube.full_wall);
    const auto [section_in3, plastic_in3] = moduli(section, axis);
    if (tube.shape.round) {
        return round_tube_moment_lb_in(tube.shape.width_in, wall_in, section_in3, plastic_in3, tube.yield_psi,
                                       tube.modulus_psi);
    }
    const bool about_x = axis == BentAbout::x;
    const double other_inertia_in4 = about_x ? section.inertia_y_in4 : section.inertia_x_in4;
    const double flange_in = about_x ? tube.shape.width_in : tube.shape.depth_in;
    const double web_in = about_x ? tube.shape.depth_in : tube.shape.width_in;
    const double corners_in = 3.0 * wall_in;
    return rectangular_tube_moment_lb_in({flange_in - corners_in, web_in - corners_in, wall_in, section_in3,
                                          plastic_in3, std::sqrt(other_inertia_in4 / section.area_in2),
                                          section.area_in2, section.torsion_in4, web_in > flange_in, tube.unbraced_in},
                                         tube.yield_psi, tube.modulus_psi);
}

double compressed_share(const TubeMember& tube) {
    const double wall_in = design_wall_in(tube.shape.wall_in, tube.full_wall);
    if (tube.shape.round) {
        const double stiffness = tube.modulus_psi / tube.yield_psi;
        return std::min(1.0, 2.0 / 3.0 + 0.038 * stiffness * wall_in / tube.shape.width_in);
    }
    double lost_in = 0.0;
    for (const double side_in : {tube.shape.width_in, tube.shape.depth_in}) {
        const double flat_in = std::max(0.0, side_in - 3.0 * wall_in);
        lost_in += 2.0 * (flat_in - effective_wall_in(flat_in, wall_in, tube.yield_psi, tube.modulus_psi));
    }
    return 1.0 - lost_in * wall_in / design_section(tube.shape, tube.full_wall).area_in2;
}

double flagpole_axial_lb(const TubeSection& section, double height_in, double yield_psi, double modulus_psi) {
    const double least_radius_in = std::sqrt(std::min(section.inertia_x_in4, section.inertia_y_in4) / section.area_in2);
    const double slenderness = std::max(1.0, flagpole_length_factor * height_in / least_radius_in);
    return buckling_stress_psi(slenderness, yield_psi, modulus_psi) * section.area_in2;
}

}  // namespace toehold::resistance::steel
