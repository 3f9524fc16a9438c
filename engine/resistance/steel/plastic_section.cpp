#include "resistance/steel/plastic_section.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

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

/// A slice across a solid rounded rectangle: its height from the middle, half its width, and its weight in the sum.
struct Slice {
    double height_in = 0.0, half_in = 0.0, weight_in = 0.0;
};

/// Of the upper half, for Simpson's rule: the straight part, then the corners, whose heights are taken as the sine of
/// an angle so that the round is smooth. The same for every direction.
std::vector<Slice> slices(double width_in, double depth_in, double radius_in) {
    std::vector<Slice> all;
    if (!(width_in > 0.0) || !(depth_in > 0.0)) return all;
    constexpr int intervals = 64;
    const double straight_in = 0.5 * depth_in - radius_in;
    const auto add = [&](double height_in, double weight_in, int index) {
        const double simpson = index == 0 || index == intervals ? 1.0 : (index % 2 == 1 ? 4.0 : 2.0);
        all.push_back({height_in, half_width_in(width_in, depth_in, radius_in, height_in),
                       simpson * weight_in / intervals / 3.0});
    };
    for (int index = 0; index <= intervals; ++index) add(straight_in * index / intervals, straight_in, index);
    for (int index = 0; index <= intervals; ++index) {
        const double angle = 0.5 * std::numbers::pi * index / intervals;
        add(straight_in + radius_in * std::sin(angle), 0.5 * std::numbers::pi * radius_in * std::cos(angle), index);
    }
    return all;
}

double modulus_in3(const std::vector<Slice>& slices, double sine, double cosine) {
    double half = 0.0;
    for (const Slice& slice : slices) half += slice.weight_in * strip(slice.half_in, sine, slice.height_in * cosine);
    return 2.0 * half;
}

/// Of the outside, and of what is missing inside.
struct Sliced {
    std::vector<Slice> outside, inside;
    explicit Sliced(const HollowRectangle& section)
        : outside(slices(section.width_in, section.depth_in, section.outside_radius_in)),
          inside(slices(section.width_in - 2.0 * section.wall_in, section.depth_in - 2.0 * section.wall_in,
                        std::max(0.0, section.outside_radius_in - section.wall_in))) {}
    [[nodiscard]] double modulus_in3(double angle_rad) const {
        const double sine = std::abs(std::sin(angle_rad)), cosine = std::abs(std::cos(angle_rad));
        return steel::modulus_in3(outside, sine, cosine) - steel::modulus_in3(inside, sine, cosine);
    }
};

}  // namespace

double plastic_modulus_in3(const HollowRectangle& section, double angle_rad) {
    return Sliced(section).modulus_in3(angle_rad);
}

PlasticSection::PlasticSection(const HollowRectangle& section) {
    const Sliced sliced(section);
    for (std::size_t line = 0; line < lines_; ++line) {
        const double angle = 0.5 * std::numbers::pi * static_cast<double>(line) / (lines_ - 1);
        moduli_[line] = sliced.modulus_in3(angle);
        cosine_[line] = std::cos(angle);
        sine_[line] = std::sin(angle);
    }
}

double PlasticSection::about(double angle_rad) const {
    // Within the first quarter, by symmetry about both axes.
    const double across = std::abs(std::sin(angle_rad)), along = std::abs(std::cos(angle_rad));
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t line = 0; line < lines_; ++line) {
        const double component = cosine_[line] * along + sine_[line] * across;
        if (component > 0.0) least = std::min(least, moduli_[line] / component);
    }
    return least;
}

HollowRectangle design_shape(const TubeShape& tube, bool full_wall) {
    const double wall_in = design_wall_in(tube.wall_in, full_wall);
    const double corner_in = std::min(2.0 * wall_in, 0.5 * std::min(tube.width_in, tube.depth_in));
    return {tube.width_in, tube.depth_in, wall_in, corner_in};
}

}  // namespace toehold::resistance::steel
