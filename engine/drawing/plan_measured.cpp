#include "drawing/marks/dimension.h"
#include "drawing/marks/figures.h"
#include "drawing/marks/shapes.h"
#include "drawing/parts.h"
#include "drawing/plan_sheet.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::drawing {
namespace {

/// Where a line through the point along one axis meets the outline, nearest to the point.
std::optional<double> nearest_edge(const std::vector<Point>& outline, Point at, Measure measure) {
    const bool across = measure == Measure::across;
    std::optional<double> nearest;
    const auto along = [&](const Point& point) { return across ? point.x : point.y; };
    const auto aside = [&](const Point& point) { return across ? point.y : point.x; };
    for (std::size_t index = 0; index < outline.size(); ++index) {
        const Point from = outline[index], to = outline[(index + 1) % outline.size()];
        if ((aside(from) > aside(at)) == (aside(to) > aside(at))) continue;
        const double share = (aside(at) - aside(from)) / (aside(to) - aside(from));
        const double edge = along(from) + share * (along(to) - along(from));
        if (!nearest || std::abs(edge - along(at)) < std::abs(*nearest - along(at))) nearest = edge;
    }
    return nearest;
}

/// Half the hole's extent along an axis.
double half_extent(const model::Hole& hole, Measure measure) {
    const auto* const slot = std::get_if<model::Slot>(&hole.shape);
    if (slot == nullptr) return 0.5 * across_in(hole);
    const Box box = around(slot_contour(hole, *slot));
    return 0.5 * (measure == Measure::across ? width(box) : height(box));
}

struct EdgeDistance {
    double center_in = 0.0;  ///< from the hole's centre to the plate's edge
    double clear_in = 0.0;   ///< from the hole's edge; negative where the hole breaks out
};

/// A line from the hole's centre to the plate's edge with a stroke across each end, and how long it is.
std::optional<EdgeDistance> add_distance(Scene& scene, const PlanSheet& sheet, const model::Hole& hole,
                                         Measure measure) {
    constexpr double stroke_mm = 1.6;
    const Point at{hole.center.x_in, hole.center.y_in};
    const std::optional<double> edge = nearest_edge(sheet.outline, at, measure);
    if (!edge) return std::nullopt;
    const bool across = measure == Measure::across;
    const Point end = across ? Point{*edge, at.y} : Point{at.x, *edge};
    const std::string part = anchor_part(hole.id);
    scene.items.emplace_back(line(at, end, Pen::snap, part));
    for (const Point& place : {at, end}) {
        const Place stroke = standing(place);
        scene.items.emplace_back(
            across ? line(moved_mm(stroke, 0.0, -stroke_mm), moved_mm(stroke, 0.0, stroke_mm), Pen::handle, part)
                   : line(moved_mm(stroke, -stroke_mm, 0.0), moved_mm(stroke, stroke_mm, 0.0), Pen::handle, part));
    }
    const double center = std::abs(*edge - (across ? at.x : at.y));
    return EdgeDistance{center, center - half_extent(hole, measure)};
}

/// Beside the hole towards the plate's middle, where neither dimensions nor marks stand.
void add_words(Scene& scene, const PlanSheet& sheet, const model::Hole& hole, const std::vector<std::string>& lines) {
    constexpr double off_mm = 1.5, line_mm = 3.7;
    const Point plate = middle(around(sheet.outline));
    const double right = hole.center.x_in > plate.x ? -1.0 : 1.0, up = hole.center.y_in > plate.y ? -1.0 : 1.0;
    const double reach = covered_radius_in(sheet.subject, hole);
    const Place corner =
        standing({hole.center.x_in + right * reach, hole.center.y_in + up * reach}, {right * off_mm, up * off_mm});
    double top_mm = up > 0.0 ? line_mm * static_cast<double>(lines.size()) : 0.0;
    for (const std::string& words : lines) {
        Text text;
        text.at = moved_mm(corner, 0.0, top_mm);
        text.words = words;
        text.size = TextSize::small;
        text.across = right > 0.0 ? Across::left : Across::right;
        text.upright = Upright::top;
        text.pen = Pen::handle;
        text.on_paper = true;
        text.part = anchor_part(hole.id);
        scene.items.emplace_back(std::move(text));
        top_mm -= line_mm;
    }
}

void add_distances(Scene& scene, const PlanSheet& sheet, const model::Hole& hole) {
    std::vector<std::string> lines;
    for (const Measure measure : {Measure::across, Measure::upright}) {
        const std::optional<EdgeDistance> distance = add_distance(scene, sheet, hole, measure);
        if (!distance) continue;
        lines.push_back((measure == Measure::across ? "x " : "y ") +
                        length_figure(distance->center_in, sheet.subject.system) + ", clear " +
                        length_figure(distance->clear_in, sheet.subject.system));
    }
    add_words(scene, sheet, hole, lines);
}

}  // namespace

void add_measured(Scene& scene, const PlanSheet& sheet) {
    for (const std::string& part : sheet.options.measured) {
        const std::string id = id_of(part, "anchor");
        const auto& holes = on_deck(sheet.subject.detail).plate.holes;
        const auto hole =
            std::find_if(holes.begin(), holes.end(), [&](const model::Hole& one) { return one.id == id; });
        if (id.empty() || hole == holes.end()) continue;
        add_distances(scene, sheet, *hole);
    }
}

}  // namespace toehold::drawing
