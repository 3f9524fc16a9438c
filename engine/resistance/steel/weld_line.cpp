#include "resistance/steel/weld_line.h"

#include <cmath>
#include <numbers>

namespace toehold::resistance::steel {
namespace {

using mechanics::Point;

double length_of(const WeldSegment& segment) {
    return std::hypot(segment.to.x - segment.from.x, segment.to.y - segment.from.y);
}

/// Part of the moment's intensity for each inch from the centroid: the moment over the line's second moments, both axes
/// at once, so that a line without a symmetry axis needs no turning to its principal ones.
Point gradient(const WeldLine& line, Point moment) {
    const double determinant = line.xx_in3 * line.yy_in3 - line.xy_in3 * line.xy_in3;
    return {(moment.x * line.yy_in3 - moment.y * line.xy_in3) / determinant,
            (moment.y * line.xx_in3 - moment.x * line.xy_in3) / determinant};
}

WeldIntensity at(const WeldLine& line, const WeldForces& forces, Point place) {
    const Point way{std::cos(forces.direction_rad), std::sin(forces.direction_rad)};
    const Point away{place.x - line.center.x, place.y - line.center.y};
    const Point bent = gradient(line, {forces.moment_lb_in * way.x, forces.moment_lb_in * way.y});
    const Point off = gradient(line, {forces.axial_lb * line.center.x, forces.axial_lb * line.center.y});
    const double torsion = forces.shear_lb * (line.center.y * way.x - line.center.x * way.y);
    const double twist = torsion / (line.xx_in3 + line.yy_in3);
    WeldIntensity intensity;
    intensity.bending = std::abs(bent.x * away.x + bent.y * away.y);
    intensity.axial = std::abs(forces.axial_lb) / line.length_in + std::abs(off.x * away.x + off.y * away.y);
    intensity.shear = std::hypot(forces.shear_lb * way.x / line.length_in - twist * away.y,
                                 forces.shear_lb * way.y / line.length_in + twist * away.x);
    return intensity;
}

}  // namespace

WeldLine weld_line(std::span<const WeldSegment> segments) {
    WeldLine line;
    for (const WeldSegment& segment : segments) {
        const double length = length_of(segment);
        line.length_in += length;
        line.center.x += 0.5 * length * (segment.from.x + segment.to.x);
        line.center.y += 0.5 * length * (segment.from.y + segment.to.y);
        line.places.push_back(segment.from);
        line.places.push_back(segment.to);
    }
    line.center = {line.center.x / line.length_in, line.center.y / line.length_in};
    for (const WeldSegment& segment : segments) {
        const double length = length_of(segment);
        const double x = 0.5 * (segment.from.x + segment.to.x) - line.center.x, dx = segment.to.x - segment.from.x;
        const double y = 0.5 * (segment.from.y + segment.to.y) - line.center.y, dy = segment.to.y - segment.from.y;
        line.xx_in3 += length * (x * x + dx * dx / 12.0);
        line.xy_in3 += length * (x * y + dx * dy / 12.0);
        line.yy_in3 += length * (y * y + dy * dy / 12.0);
    }
    return line;
}

WeldLine circular_weld(double diameter_in) {
    const double radius = 0.5 * diameter_in;
    WeldLine line;
    line.length_in = std::numbers::pi * diameter_in;
    line.xx_in3 = line.yy_in3 = std::numbers::pi * radius * radius * radius;
    line.radius_in = radius;
    return line;
}

double WeldIntensity::resultant() const { return std::hypot(normal(), shear); }

std::vector<WeldIntensity> intensities(const WeldLine& line, const WeldForces& forces) {
    if (line.radius_in > 0.0) {
        return {at(line, forces,
                   {line.radius_in * std::cos(forces.direction_rad), line.radius_in * std::sin(forces.direction_rad)})};
    }
    std::vector<WeldIntensity> all;
    for (const Point place : line.places) all.push_back(at(line, forces, place));
    return all;
}

std::vector<NormalShare> normal_shares(const WeldLine& line) {
    std::vector<NormalShare> shares;
    shares.reserve(line.places.size());
    const Point off = gradient(line, line.center), x = gradient(line, {1.0, 0.0}), y = gradient(line, {0.0, 1.0});
    for (const Point place : line.places) {
        const Point away{place.x - line.center.x, place.y - line.center.y};
        shares.push_back({x.x * away.x + x.y * away.y, y.x * away.x + y.y * away.y,
                          1.0 / line.length_in + std::abs(off.x * away.x + off.y * away.y)});
    }
    return shares;
}

double normal(const NormalShare& share, const WeldForces& forces) {
    const double bent =
        share.towards_x * std::cos(forces.direction_rad) + share.towards_y * std::sin(forces.direction_rad);
    return std::abs(forces.moment_lb_in * bent) + std::abs(forces.axial_lb) * share.axial;
}

}  // namespace toehold::resistance::steel
