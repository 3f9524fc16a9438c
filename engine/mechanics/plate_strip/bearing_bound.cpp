#include "mechanics/plate_strip/bearing_bound.h"

#include "mechanics/plane/area_moments.h"

#include <algorithm>
#include <limits>

namespace toehold::mechanics {
namespace {

constexpr double no_moment_lb_in = 1e-9;
/// Finer cuts only bring the bound down, by little.
constexpr int cuts = 8;

/// `sign`: 1 beyond the section, -1 short of it.
CutArea cut_area(const PlateSection& section, const Polygon& patch, double sign, double distance_in) {
    const double offset = section.offset_in + sign * distance_in;
    const Polygon part = clip_half_plane(patch, sign * offset, -sign * section.normal_x, -sign * section.normal_y);
    const Moments outside = moments(part);
    CutArea cut;
    cut.distance_in = distance_in;
    if (!(outside.area > 0.0)) return cut;
    const Point centroid{outside.x / outside.area, outside.y / outside.area};
    cut.area_in2 = outside.area;
    cut.moment_in3 = std::max(0.0, sign * section.beyond_in(centroid) * outside.area);
    cut.along_in = section.along_in(centroid);
    cut.extent = {cut.along_in, cut.along_in};
    for (const Point corner : part) {
        const double place = section.along_in(corner);
        cut.extent = {std::min(cut.extent.from, place), std::max(cut.extent.to, place)};
    }
    return cut;
}

std::vector<CutArea> cut_areas(const PlateSection& section, const Polygon& patch, double sign, double reach_in) {
    std::vector<CutArea> all;
    if (!(reach_in > 0.0)) return all;
    for (int cut = 0; cut < cuts; ++cut) all.push_back(cut_area(section, patch, sign, reach_in * cut / cuts));
    // Nothing is left outside the last one; along the section it is the sliver before it.
    all.push_back(all.back());
    all.back().distance_in = reach_in;
    all.back().area_in2 = all.back().moment_in3 = 0.0;
    return all;
}

void take_least(SupportBearing& bearing, double slope, double offset_in, double above_in3, const CutArea& pressed) {
    const double moment =
        bearing.force_lb * slope * std::max(0.0, bearing.arm_in + offset_in) + bearing.peak_psi * above_in3;
    if (moment >= bearing.moment_lb_in) return;
    bearing.moment_lb_in = moment;
    bearing.line_slope = slope;
    bearing.line_offset_in = offset_in;
    bearing.above_line_in3 = above_in3;
    bearing.pressed = pressed;
}

/// The line that meets the lever arm at the one cut beyond the section, and is zero at the other, short of it.
void try_line(SupportBearing& bearing, const CutArea& far, const CutArea& near) {
    const double offset = near.distance_in;
    const double length = far.distance_in + offset;
    if (!(length > 0.0)) return;
    const double slope = far.distance_in / length;
    const double above_far = (1.0 - slope) * far.moment_in3 - slope * offset * far.area_in2;
    const double above_near = slope * (near.moment_in3 - offset * near.area_in2);
    take_least(bearing, slope, offset, std::max(0.0, above_far) + std::max(0.0, above_near), far);
}

/// A highest pressure below the mean is none; the bound must not rest on it.
double peak(const AreaAtSection& area, const PatchForce& force) {
    return std::max(force.peak_psi, force.force_lb / area.total_in2);
}

void add(GreatestBearing& greatest, const SupportBearing& bearing) {
    BearingBeyond& total = greatest.total;
    const Interval& extent = bearing.pressed.extent;
    const double before = total.along_in * total.force_lb;
    total.extent = greatest.supports.empty()
                       ? extent
                       : Interval{std::min(total.extent.from, extent.from), std::max(total.extent.to, extent.to)};
    total.force_lb += bearing.beyond_lb;
    total.moment_lb_in += bearing.moment_lb_in;
    total.along_in = (before + bearing.beyond_lb * bearing.pressed.along_in) / total.force_lb;
    greatest.supports.push_back(bearing);
}

}  // namespace

AreaAtSection area_at_section(const PlateSection& section, const Polygon& patch) {
    AreaAtSection area;
    area.total_in2 = moments(patch).area;
    area.ahead_in = area.back_in = -std::numeric_limits<double>::infinity();
    for (const Point corner : patch) {
        const double beyond_in = section.beyond_in(corner);
        area.ahead_in = std::max(area.ahead_in, beyond_in);
        area.back_in = std::max(area.back_in, -beyond_in);
    }
    area.ahead = cut_areas(section, patch, 1.0, area.ahead_in);
    area.back = cut_areas(section, patch, -1.0, area.back_in);
    return area;
}

SupportBearing greatest_bearing(const PlateSection& section, const AreaAtSection& area, const PatchForce& force) {
    SupportBearing bearing;
    if (area.ahead.empty()) return bearing;
    bearing.force_lb = force.force_lb;
    bearing.arm_in = section.beyond_in(force.at);
    bearing.peak_psi = peak(area, force);
    bearing.beyond_lb = std::min(force.force_lb, bearing.peak_psi * area.ahead.front().area_in2);
    bearing.moment_lb_in = std::numeric_limits<double>::infinity();
    const bool all_beyond = area.back.empty();
    const CutArea& beyond = area.ahead.front();
    take_least(bearing, all_beyond ? 1.0 : 0.0, 0.0, all_beyond ? 0.0 : beyond.moment_in3, beyond);
    for (const CutArea& far : area.ahead)
        for (const CutArea& near : area.back) try_line(bearing, far, near);
    return bearing;
}

SupportBearing even_bearing(const AreaAtSection& area, const PatchForce& force) {
    SupportBearing bearing;
    if (area.ahead.empty()) return bearing;
    bearing.force_lb = force.force_lb;
    bearing.peak_psi = peak(area, force);
    bearing.pressed = area.ahead.front();
    bearing.beyond_lb = bearing.peak_psi * bearing.pressed.area_in2;
    bearing.moment_lb_in = bearing.peak_psi * bearing.pressed.moment_in3;
    bearing.above_line_in3 = bearing.pressed.moment_in3;
    return bearing;
}

GreatestBearing greatest_bearing(const PlateSection& section, std::span<const AreaAtSection> areas,
                                 std::span<const PatchForce> supports, BearingBound bound) {
    GreatestBearing greatest;
    if (areas.size() != supports.size()) return greatest;
    for (std::size_t index = 0; index < areas.size(); ++index) {
        const PatchForce& force = supports[index];
        if (!(force.force_lb > 0.0)) continue;
        SupportBearing bearing = bound == BearingBound::even ? even_bearing(areas[index], force)
                                                             : greatest_bearing(section, areas[index], force);
        bearing.support = index;
        bearing.arm_in = section.beyond_in(force.at);
        if (bearing.moment_lb_in > no_moment_lb_in && bearing.beyond_lb > 0.0) add(greatest, bearing);
    }
    return greatest;
}

}  // namespace toehold::mechanics
