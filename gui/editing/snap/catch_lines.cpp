#include "editing/snap/catch_lines.h"

#include "editing/mounts/mount.h"
#include "editing/parts/measures.h"
#include "editing/parts/outline_shape.h"
#include "editing/snap.h"
#include "units/quantity.h"

#include <algorithm>
#include <cmath>

namespace toehold::editing {
namespace {

constexpr double same_line_in = 1e-9;
constexpr int rank_of_holes = 0;
constexpr int rank_of_edges = 1;

Direction other(Direction direction) { return direction == Direction::x ? Direction::y : Direction::x; }

/// Places as far from the sides of a rectangle as the hole is from its nearer one.
void add_edge_lines(std::vector<CatchLine>& lines, const model::RectangleOutline& rectangle, const model::Hole& hole,
                    Direction direction) {
    const Extent extent = extent_of(rectangle);
    const drawing::Point middle{0.5 * (extent.low.x + extent.high.x), 0.5 * (extent.low.y + extent.high.y)};
    const double low = coordinate(extent.low, direction), high = coordinate(extent.high, direction);
    for (const Direction measured : {direction, other(direction)}) {
        const double at = coordinate(point(hole.center), measured);
        const double edge_in = std::min(at - coordinate(extent.low, measured), coordinate(extent.high, measured) - at);
        if (!(edge_in > 0.0) || edge_in > 0.5 * (high - low)) continue;
        const Phrase why = phrase("{} from the edge", units::fraction_in(edge_in));
        lines.push_back({low + edge_in, with_coordinate(middle, direction, low), why, rank_of_edges});
        lines.push_back({high - edge_in, with_coordinate(middle, direction, high), why, rank_of_edges});
    }
}

/// A catch drawn from the thing caught; from its original where a mirror image is met exactly.
drawing::Point line_start(const CatchLine& line, Direction direction, drawing::Point at) {
    const drawing::Point start = line.shown;
    const bool met = std::abs(start.x - at.x) < same_line_in && std::abs(start.y - at.y) < same_line_in;
    return met ? with_coordinate(start, direction, -coordinate(start, direction)) : start;
}

/// An edge's line is drawn from the edge, at the height of the point.
drawing::Point drawn_from(const CatchLine& line, Direction direction, drawing::Point at) {
    if (line.rank == rank_of_edges) return with_coordinate(at, direction, coordinate(line.shown, direction));
    return line_start(line, direction, at);
}

}  // namespace

double coordinate(drawing::Point at, Direction direction) { return direction == Direction::x ? at.x : at.y; }

drawing::Point with_coordinate(drawing::Point at, Direction direction, double value_in) {
    (direction == Direction::x ? at.x : at.y) = value_in;
    return at;
}

CatchLine post_axis(const model::Plate& plate, Direction direction) {
    const Extent extent = extent_of(plate.outline);
    return {0.0, with_coordinate(extent.low, direction, 0.0), phrase("post's axis"), rank_of_holes};
}

std::vector<CatchLine> hole_lines(const model::Plate& plate, const std::string& moving, Direction direction) {
    std::vector<CatchLine> lines;
    for (const model::Hole& hole : plate.holes) {
        if (hole.id == moving) continue;
        const drawing::Point center = point(hole.center);
        const double at = coordinate(center, direction);
        lines.push_back({at, center, phrase("in line with hole {}", hole.id), rank_of_holes});
        if (std::abs(at) > same_line_in)
            lines.push_back(
                {-at, with_coordinate(center, direction, -at), phrase("mirror of hole {}", hole.id), rank_of_holes});
        if (const auto* rectangle = std::get_if<model::RectangleOutline>(&plate.outline))
            add_edge_lines(lines, *rectangle, hole, direction);
    }
    return lines;
}

const CatchLine* nearest(const std::vector<CatchLine>& lines, double value_in, const SnapRules& rules) {
    const CatchLine* best = nullptr;
    if (!rules.on) return best;
    const auto before = [&](const CatchLine& one, const CatchLine& two) {
        if (one.rank != two.rank) return one.rank < two.rank;
        return std::abs(one.at_in - value_in) < std::abs(two.at_in - value_in) - same_line_in;
    };
    for (const CatchLine& line : lines) {
        if (!(std::abs(line.at_in - value_in) <= rules.reach_in)) continue;
        if (best == nullptr || before(line, *best)) best = &line;
    }
    return best;
}

Snapped snap_to(drawing::Point to, const std::vector<CatchLine>& x_lines, const std::vector<CatchLine>& y_lines,
                const SnapRules& rules) {
    const CatchLine* const x = nearest(x_lines, to.x, rules);
    const CatchLine* const y = nearest(y_lines, to.y, rules);
    Snapped snapped;
    snapped.at = {x != nullptr ? x->at_in : to_step(to.x, rules.step_in),
                  y != nullptr ? y->at_in : to_step(to.y, rules.step_in)};
    if (x != nullptr) snapped.lines.push_back({drawn_from(*x, Direction::x, snapped.at), snapped.at, x->why});
    if (y != nullptr) snapped.lines.push_back({drawn_from(*y, Direction::y, snapped.at), snapped.at, y->why});
    return snapped;
}

double to_step(double value_in, double step_in) {
    if (!(step_in > 0.0) || !std::isfinite(step_in)) return value_in;
    const double stepped = std::round(value_in / step_in) * step_in;
    return std::isfinite(stepped) ? stepped : value_in;
}

Snapped snap(drawing::Point to, const model::Plate& plate, const std::string& moving, const SnapRules& rules) {
    if (!is_finite(to)) return {{bounded(to.x), bounded(to.y)}, {}};
    std::vector<CatchLine> x_lines = hole_lines(plate, moving, Direction::x);
    std::vector<CatchLine> y_lines = hole_lines(plate, moving, Direction::y);
    x_lines.push_back(post_axis(plate, Direction::x));
    y_lines.push_back(post_axis(plate, Direction::y));
    return snap_to(to, x_lines, y_lines, rules);
}

Snapped snap(drawing::Point to, const model::BaseDetail& detail, const SnapRules& rules) {
    return mount_snap(to, detail, rules);
}

}  // namespace toehold::editing
