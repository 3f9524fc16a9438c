#include "mechanics/yield_line/yield_line.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::mechanics {
namespace {

constexpr int angles = 72;
/// Lines between the post and the plate's edge, besides those through holes.
constexpr int steps = 8;
constexpr double touching_in = 1e-9;

double reach_in(const FootOutline& foot, double normal_x, double normal_y) {
    if (foot.round) return 0.5 * foot.width_in;
    return 0.5 * (foot.width_in * std::abs(normal_x) + foot.depth_in * std::abs(normal_y));
}

PlateSection section_at(int angle, double offset_in) {
    PlateSection section;
    section.normal_rad = 2.0 * std::numbers::pi * angle / angles;
    constexpr int quarter = angles / 4;
    // Exact zeros, so that a face's line runs along it.
    section.normal_x = angle % (2 * quarter) == quarter ? 0.0 : std::cos(section.normal_rad);
    section.normal_y = angle % (2 * quarter) == 0 ? 0.0 : std::sin(section.normal_rad);
    section.offset_in = offset_in;
    return section;
}

/// Metal where the line crosses the plate, however often, less holes. Holes that overlap are taken off twice: the line
/// is weaker then, and the bound lower.
double metal_in(const PlateSection& section, const PlateShape& plate) {
    const std::vector<double> places = crossings_in(section, plate.outline);
    double length = 0.0;
    for (std::size_t index = 0; index + 1 < places.size(); index += 2) {
        const Interval chord{places[index], places[index + 1]};
        length += chord.length();
        for (const PlateHole& hole : plate.holes) {
            const Interval gap = cut_by_hole(section, hole);
            length -= Interval{std::max(gap.from, chord.from), std::min(gap.to, chord.to)}.length();
        }
    }
    return std::max(0.0, length);
}

/// Tangent to the post, in steps to the far edge, and through both ends of every hole.
std::vector<double> offsets_in(const FootOutline& foot, const PlateShape& plate, const PlateSection& along) {
    const double nearest = reach_in(foot, along.normal_x, along.normal_y);
    const auto out = [&](Point at) { return along.normal_x * at.x + along.normal_y * at.y; };
    double farthest = nearest;
    for (const Point corner : plate.outline) farthest = std::max(farthest, out(corner));
    std::vector<double> offsets;
    offsets.reserve(steps + 2 * plate.holes.size());
    for (int step = 0; step < steps; ++step) offsets.push_back(nearest + (farthest - nearest) * step / steps);
    for (const PlateHole& hole : plate.holes) {
        offsets.push_back(out(hole.from));
        if (!(hole.from == hole.to)) offsets.push_back(out(hole.to));
    }
    std::erase_if(offsets, [&](double offset) { return offset < nearest - touching_in; });
    return offsets;
}

}  // namespace

std::vector<YieldLine> yield_lines(const FootOutline& foot, const PlateShape& plate) {
    std::vector<YieldLine> lines;
    for (int angle = 0; angle < angles; ++angle) {
        PlateSection section = section_at(angle, 0.0);
        for (const double offset : offsets_in(foot, plate, section)) {
            section.offset_in = offset;
            if (crossings_in(section, plate.outline).empty()) continue;
            lines.push_back({section.normal_rad, section.normal_x, section.normal_y, offset, metal_in(section, plate)});
        }
    }
    return lines;
}

double moment_needed_lb(const YieldLine& line, std::span<const PointLoad> loads) {
    double work = 0.0;
    for (const PointLoad& load : loads) {
        work += load.force_lb * std::max(0.0, line.normal_x * load.at.x + line.normal_y * load.at.y - line.offset_in);
    }
    if (work == 0.0) return 0.0;
    return line.metal_in > 0.0 ? std::abs(work) / line.metal_in : std::numeric_limits<double>::infinity();
}

YieldPatterns yield_patterns(const FootOutline& foot, const PlateShape& plate) {
    return {yield_lines(foot, plate), yield_bands(foot, plate)};
}

YieldPattern worst_pattern(const YieldPatterns& patterns, std::span<const PointLoad> loads) {
    YieldPattern worst;
    for (const YieldLine& line : patterns.lines) {
        const double needed = moment_needed_lb(line, loads);
        if (needed > worst.moment_needed_lb)
            worst = {YieldShape::across, needed, line.normal_rad, line.offset_in, line.metal_in, 0.0};
    }
    for (const YieldBand& band : patterns.bands) {
        const double needed = moment_needed_lb(band, loads);
        if (needed > worst.moment_needed_lb)
            worst = {YieldShape::around, needed, band.way_rad, band.offset_in, 0.0, band.width_in};
    }
    return worst;
}

}  // namespace toehold::mechanics
