#include "resistance/steel/plastic_section.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::resistance::steel {
namespace {

/// Integral over -half < x < half of |x sine + offset|.
double strip(double half_in, double sine, double offset) {
    const double across = std::abs(offset);
    if (half_in * sine <= across) return 2.0 * half_in * across;
    const double reach = across / sine;
    return sine * (half_in * half_in + reach * reach);
}

/// Half the width of a rounded rectangle at a height from its middle.
double half_width_in(double width_in, double depth_in, double radius_in, double at_in) {
    const double into_corner = std::abs(at_in) - (0.5 * depth_in - radius_in);
    if (into_corner <= 0.0) return 0.5 * width_in;
    const double left = std::max(0.0, radius_in * radius_in - into_corner * into_corner);
    return 0.5 * width_in - radius_in + std::sqrt(left);
}

/// A solid rounded rectangle, by Simpson's rule over its upper half: the straight part, then the corners, whose heights
/// are taken as the sine of an angle so that the round is smooth.
double solid_in3(double width_in, double depth_in, double radius_in, double angle_rad) {
    if (!(width_in > 0.0) || !(depth_in > 0.0)) return 0.0;
    const double sine = std::abs(std::sin(angle_rad)), cosine = std::abs(std::cos(angle_rad));
    const double straight_in = 0.5 * depth_in - radius_in;
    const auto at = [&](double height_in) {
        return strip(half_width_in(width_in, depth_in, radius_in, height_in), sine, height_in * cosine);
    };
    constexpr int intervals = 64;
    const auto simpson = [](double length, const auto& value) {
        double sum = 0.0;
        for (int index = 0; index <= intervals; ++index) {
            const double weight = index == 0 || index == intervals ? 1.0 : (index % 2 == 1 ? 4.0 : 2.0);
            sum += weight * value(length * index / intervals);
        }
        return sum * length / intervals / 3.0;
    };
    const double lower = simpson(straight_in, at);
    const double upper = simpson(0.5 * std::numbers::pi, [&](double angle) {
        return radius_in * std::cos(angle) * at(straight_in + radius_in * std::sin(angle));
    });
    return 2.0 * (lower + upper);
}

}  // namespace

double plastic_modulus_in3(const HollowRectangle& section, double angle_rad) {
    const double inside_width = section.width_in - 2.0 * section.wall_in;
    const double inside_depth = section.depth_in - 2.0 * section.wall_in;
    const double inside_radius = std::max(0.0, section.outside_radius_in - section.wall_in);
    return solid_in3(section.width_in, section.depth_in, section.outside_radius_in, angle_rad) -
           solid_in3(inside_width, inside_depth, inside_radius, angle_rad);
}

PlasticSection::PlasticSection(const HollowRectangle& section) {
    for (std::size_t line = 0; line < lines_; ++line)
        moduli_[line] = plastic_modulus_in3(section, 0.5 * std::numbers::pi * static_cast<double>(line) / (lines_ - 1));
}

double PlasticSection::about(double angle_rad) const {
    // Within the first quarter, by symmetry about both axes.
    const double angle = std::atan2(std::abs(std::sin(angle_rad)), std::abs(std::cos(angle_rad)));
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t line = 0; line < lines_; ++line) {
        const double at = 0.5 * std::numbers::pi * static_cast<double>(line) / (lines_ - 1);
        const double along = std::cos(at - angle);
        if (along > 0.0) least = std::min(least, moduli_[line] / along);
    }
    return least;
}

HollowRectangle design_shape(const TubeShape& tube, bool full_wall) {
    const double wall_in = design_wall_in(tube.wall_in, full_wall);
    const double corner_in = std::min(2.0 * wall_in, 0.5 * std::min(tube.width_in, tube.depth_in));
    return {tube.width_in, tube.depth_in, wall_in, corner_in};
}

}  // namespace toehold::resistance::steel
