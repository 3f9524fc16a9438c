#include "mechanics/plane/shape.h"
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

/// The outline's corners as lines of one angle see them.
struct SeenCorner {
    double out_in = 0.0, along_in = 0.0;
};

/// Where lines of one angle cross an outline.
class Crossings {
  public:
    Crossings(const Shape& plate, const PlateSection& along) {
        corners_.reserve(plate.outline().size());
        for (const Point corner : plate.outline())
            corners_.push_back({along.beyond_in(corner), along.along_in(corner)});
        if (!plate.convex()) return;
        farthest_ = plate.farthest(along.normal_rad);
        nearest_ = plate.farthest(along.normal_rad + std::numbers::pi);
    }

    /// Of the line so far out: their places along it, in order.
    [[nodiscard]] const std::vector<double>& of(double offset_in) {
        places_.clear();
        if (farthest_ == nearest_) {
            for (std::size_t at = 0; at < corners_.size(); ++at) add(at, after(at), offset_in);
        } else {
            add_between(nearest_, farthest_, offset_in);
            add_between(farthest_, nearest_, offset_in);
        }
        std::sort(places_.begin(), places_.end());
        return places_;
    }

  private:
    [[nodiscard]] std::size_t after(std::size_t at) const { return at + 1 == corners_.size() ? 0 : at + 1; }

    void add(std::size_t at, std::size_t next, double offset_in) {
        const double before = corners_[at].out_in - offset_in, behind = corners_[next].out_in - offset_in;
        if ((before >= 0.0) == (behind >= 0.0)) return;
        const double share = before / (before - behind);
        places_.push_back(corners_[at].along_in + share * (corners_[next].along_in - corners_[at].along_in));
    }

    /// From one corner on to the other the way out only grows or only falls.
    void add_between(std::size_t from, std::size_t to, double offset_in) {
        const std::size_t all = corners_.size();
        const auto at = [&](std::size_t step) { return from + step < all ? from + step : from + step - all; };
        const auto past = [&](std::size_t step) { return corners_[at(step)].out_in - offset_in >= 0.0; };
        std::size_t low = 0, high = to >= from ? to - from : to + all - from;
        const bool open = past(low);
        if (past(high) == open) return;
        while (high - low > 1) {
            const std::size_t middle = low + (high - low) / 2;
            (past(middle) == open ? low : high) = middle;
        }
        add(at(low), at(high), offset_in);
    }

    std::vector<SeenCorner> corners_;
    std::size_t farthest_ = 0, nearest_ = 0;  ///< the same: not convex
    std::vector<double> places_;
};

/// Metal where the line crosses the plate, however often, less holes. Holes that overlap are taken off twice: the line
/// is weaker then, and the bound lower.
double metal_in(const PlateSection& section, const std::vector<double>& crossings, const PlateShape& plate) {
    double length = 0.0;
    for (std::size_t index = 0; index + 1 < crossings.size(); index += 2) {
        const Interval chord{crossings[index], crossings[index + 1]};
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

/// Within this of the most, relative: sums in another order differ by far less.
constexpr double nearly = 1.0 - 1e-9;

/// Work of the loads on the turn of all that lies past a line so far out.
double work(std::span<const double> out_in, std::span<const PointLoad> loads, double offset_in) {
    double even = 0.0, odd = 0.0;
    std::size_t at = 0;
    for (; at + 1 < loads.size(); at += 2) {
        even += loads[at].force_lb * std::max(0.0, out_in[at] - offset_in);
        odd += loads[at + 1].force_lb * std::max(0.0, out_in[at + 1] - offset_in);
    }
    if (at < loads.size()) even += loads[at].force_lb * std::max(0.0, out_in[at] - offset_in);
    return even + odd;
}

/// What every line needs, to rounding. Lines of one angle, which stand together, see the loads at the same places.
std::vector<double> moments_needed_lb(std::span<const YieldLine> lines, std::span<const PointLoad> loads) {
    std::vector<double> needed, out_in(loads.size());
    needed.reserve(lines.size());
    const YieldLine* seen_by = nullptr;
    for (const YieldLine& line : lines) {
        if (seen_by == nullptr || line.normal_x != seen_by->normal_x || line.normal_y != seen_by->normal_y) {
            for (std::size_t at = 0; at < loads.size(); ++at)
                out_in[at] = line.normal_x * loads[at].at.x + line.normal_y * loads[at].at.y;
            seen_by = &line;
        }
        needed.push_back(line.metal_in > 0.0 ? std::abs(work(out_in, loads, line.offset_in)) / line.metal_in
                                             : moment_needed_lb(line, loads));
    }
    return needed;
}

YieldPattern worst_line(std::span<const YieldLine> lines, std::span<const PointLoad> loads) {
    YieldPattern worst;
    const std::vector<double> needed = moments_needed_lb(lines, loads);
    const double most = needed.empty() ? 0.0 : *std::max_element(needed.begin(), needed.end());
    for (std::size_t at = 0; at < lines.size(); ++at) {
        if (needed[at] < nearly * most) continue;
        const YieldLine& line = lines[at];
        const double needed_lb = moment_needed_lb(line, loads);
        if (needed_lb > worst.moment_needed_lb)
            worst = {YieldShape::across, needed_lb, line.normal_rad, line.offset_in, line.metal_in, 0.0};
    }
    return worst;
}

}  // namespace

std::vector<YieldLine> yield_lines(const FootOutline& foot, const PlateShape& plate) {
    std::vector<YieldLine> lines;
    const Shape outline(plate.outline);
    for (int angle = 0; angle < angles; ++angle) {
        PlateSection section = section_at(angle, 0.0);
        Crossings line(outline, section);
        for (const double offset : offsets_in(foot, plate, section)) {
            section.offset_in = offset;
            const std::vector<double>& crossings = line.of(offset);
            if (crossings.empty()) continue;
            lines.push_back(
                {section.normal_rad, section.normal_x, section.normal_y, offset, metal_in(section, crossings, plate)});
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
    YieldPattern worst = worst_line(patterns.lines, loads);
    double width_in = -1.0;
    BandLoad load;
    for (const YieldBand& band : patterns.bands) {
        if (band.width_in != width_in) load = work_of(band.foot, band.width_in, loads);
        width_in = band.width_in;
        const double needed = moment_needed_lb(band, load);
        if (needed > worst.moment_needed_lb)
            worst = {YieldShape::around, needed, band.way_rad, band.offset_in, 0.0, band.width_in};
    }
    return worst;
}

}  // namespace toehold::mechanics
