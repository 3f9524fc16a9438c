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

constexpr double first_row_mm = 3.5, row_mm = 5.0;

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

/// Words on the side of the hole's end, within the plate.
void add_distance(Scene& scene, const DimensionRow& row, const DimensionEnd& hole, const DimensionEnd& edge,
                  units::System system) {
    const std::string words = length_figure(std::abs(edge.at_in - hole.at_in), system);
    if (edge.at_in < hole.at_in) {
        add_dimension(scene, row, edge, hole, words, WordsAt::after);
    } else {
        add_dimension(scene, row, hole, edge, words, WordsAt::before);
    }
}

/// From the hole's edge and from its centre to the plate's edge, in rows beside the hole towards the plate's middle,
/// where no other dimensions stand.
void add_distances(Scene& scene, const PlanSheet& sheet, const model::Hole& hole, Measure measure) {
    const Point at{hole.center.x_in, hole.center.y_in};
    const std::optional<double> edge = nearest_edge(sheet.outline, at, measure);
    if (!edge) return;
    const bool across = measure == Measure::across;
    const double along = across ? at.x : at.y, aside = across ? at.y : at.x;
    const Point plate = middle(around(sheet.outline));
    const double inward = aside > (across ? plate.y : plate.x) ? -1.0 : 1.0;
    DimensionRow row{measure,
                     aside + inward * covered_radius_in(sheet.subject, hole),
                     inward * first_row_mm,
                     Pen::snap,
                     anchor_part(hole.id),
                     true};
    const double rim = along + (*edge < along ? -1.0 : 1.0) * half_extent(hole, measure);
    add_distance(scene, row, {rim, aside}, {*edge, aside}, sheet.subject.system);
    row.offset_mm += inward * row_mm;
    add_distance(scene, row, {along, aside}, {*edge, aside}, sheet.subject.system);
}

}  // namespace

void add_measured(Scene& scene, const PlanSheet& sheet) {
    for (const std::string& part : sheet.options.measured) {
        const std::string id = id_of(part, "anchor");
        const auto& holes = sheet.subject.detail.plate.holes;
        const auto hole =
            std::find_if(holes.begin(), holes.end(), [&](const model::Hole& one) { return one.id == id; });
        if (id.empty() || hole == holes.end()) continue;
        add_distances(scene, sheet, *hole, Measure::across);
        add_distances(scene, sheet, *hole, Measure::upright);
    }
}

}  // namespace toehold::drawing
