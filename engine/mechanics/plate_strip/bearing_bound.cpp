#include "mechanics/plate_strip/bearing_bound.h"

#include <algorithm>
#include <limits>

namespace toehold::mechanics {
namespace {

constexpr double no_moment_lb_in = 1e-9;
/// Finer cuts only bring the bound down, by little.
constexpr int cuts = 8;

/// `sign`: 1 beyond the section, -1 short of it.
CutArea cut_area(const PlateSection& section, const Shape& patch, double sign, double distance_in) {
    CutArea cut{distance_in, 0.0, 0.0, 0.0, {}};
    ShapePart part(patch);
    part.keep({-sign * section.offset_in - distance_in, sign * section.normal_x, sign * section.normal_y});
    if (part.empty()) return cut;
    const Moments outside = part.moments();
    if (!(outside.area > 0.0)) return cut;
    const Point from = patch.reference();
    const Point centroid{from.x + outside.x / outside.area, from.y + outside.y / outside.area};
    cut.area_in2 = outside.area;
    cut.moment_in3 = std::max(0.0, sign * section.beyond_in(centroid) * outside.area);
    cut.along_in = section.along_in(centroid);
    cut.extent = part.extent(-section.normal_y, section.normal_x);
    return cut;
}

std::vector<CutArea> cut_areas(const PlateSection& section, const Shape& patch, double sign, double reach_in) {
    std::vector<CutArea> all;
    if (!(reach_in > 0.0)) return all;
    all.reserve(cuts + 1);
    for (int cut = 0; cut < cuts; ++cut) all.push_back(cut_area(section, patch, sign, reach_in * cut / cuts));
    // Nothing is left outside the last one; along the section it is the sliver before it.
    all.push_back(all.back());
    all.back().distance_in = reach_in;
    all.back().area_in2 = all.back().moment_in3 = 0.0;
    return all;
}

/// The line that meets the lever arm at the one cut beyond the section, and is zero at the other, short of it.
LeverLine line_through(const CutArea& far, const CutArea& near, std::size_t pressed) {
    const double offset = near.distance_in;
    const double slope = far.distance_in / (far.distance_in + offset);
    const double above_far = (1.0 - slope) * far.moment_in3 - slope * offset * far.area_in2;
    const double above_near = slope * (near.moment_in3 - offset * near.area_in2);
    return {slope, offset, std::max(0.0, above_far) + std::max(0.0, above_near), pressed};
}

std::vector<LeverLine> lever_lines(const AreaAtSection& area) {
    std::vector<LeverLine> lines;
    if (area.ahead.empty()) return lines;
    const bool all_beyond = area.back.empty();
    lines.push_back({all_beyond ? 1.0 : 0.0, 0.0, all_beyond ? 0.0 : area.ahead.front().moment_in3, 0});
    for (std::size_t far = 0; far < area.ahead.size(); ++far) {
        for (const CutArea& near : area.back) {
            if (area.ahead[far].distance_in + near.distance_in > 0.0)
                lines.push_back(line_through(area.ahead[far], near, far));
        }
    }
    return lines;
}

/// A highest pressure below the mean is none; the bound must not rest on it.
double peak(const AreaAtSection& area, const PatchForce& force) {
    return std::max(force.peak_psi, force.force_lb / area.total_in2);
}

/// One support's part, which is more than nothing.
void add(BearingBeyond& total, const CutArea& pressed, double beyond_lb, double moment_lb_in) {
    const Interval& extent = pressed.extent;
    const double before = total.along_in * total.force_lb;
    total.extent = total.force_lb > 0.0
                       ? Interval{std::min(total.extent.from, extent.from), std::max(total.extent.to, extent.to)}
                       : extent;
    total.force_lb += beyond_lb;
    total.moment_lb_in += moment_lb_in;
    total.along_in = (before + beyond_lb * pressed.along_in) / total.force_lb;
}

}  // namespace

AreaAtSection area_at_section(const PlateSection& section, const Shape& patch) {
    AreaAtSection area;
    area.total_in2 = patch.moments().area;
    area.ahead_in = area.back_in = -std::numeric_limits<double>::infinity();
    if (patch.outline().empty()) return area;
    const Interval out = ShapePart(patch).extent(section.normal_x, section.normal_y);
    area.ahead_in = out.to - section.offset_in;
    area.back_in = section.offset_in - out.from;
    area.ahead = cut_areas(section, patch, 1.0, area.ahead_in);
    area.back = cut_areas(section, patch, -1.0, area.back_in);
    area.lines = lever_lines(area);
    return area;
}

SupportBearing greatest_bearing(const PlateSection& section, const AreaAtSection& area, const PatchForce& force) {
    SupportBearing bearing;
    if (area.ahead.empty()) return bearing;
    bearing.force_lb = force.force_lb;
    bearing.arm_in = section.beyond_in(force.at);
    bearing.peak_psi = peak(area, force);
    bearing.beyond_lb = std::min(force.force_lb, bearing.peak_psi * area.ahead.front().area_in2);
    const LeverLine* least = &area.lines.front();
    bearing.moment_lb_in = std::numeric_limits<double>::infinity();
    for (const LeverLine& line : area.lines) {
        const double moment = force.force_lb * line.slope * std::max(0.0, bearing.arm_in + line.offset_in) +
                              bearing.peak_psi * line.above_in3;
        if (moment >= bearing.moment_lb_in) continue;
        bearing.moment_lb_in = moment;
        least = &line;
    }
    bearing.line_slope = least->slope;
    bearing.line_offset_in = least->offset_in;
    bearing.above_line_in3 = least->above_in3;
    bearing.pressed = area.ahead[least->pressed];
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
        if (!(bearing.moment_lb_in > no_moment_lb_in && bearing.beyond_lb > 0.0)) continue;
        add(greatest.total, bearing.pressed, bearing.beyond_lb, bearing.moment_lb_in);
        greatest.supports.push_back(bearing);
    }
    return greatest;
}

BearingBeyond even_beyond(std::span<const AreaAtSection> areas, std::span<const PatchForce> supports) {
    BearingBeyond total;
    if (areas.size() != supports.size()) return total;
    for (std::size_t index = 0; index < areas.size(); ++index) {
        const AreaAtSection& area = areas[index];
        if (!(supports[index].force_lb > 0.0) || area.ahead.empty()) continue;
        const CutArea& pressed = area.ahead.front();
        const double psi = peak(area, supports[index]);
        const double beyond_lb = psi * pressed.area_in2, moment_lb_in = psi * pressed.moment_in3;
        if (moment_lb_in > no_moment_lb_in && beyond_lb > 0.0) add(total, pressed, beyond_lb, moment_lb_in);
    }
    return total;
}

}  // namespace toehold::mechanics
