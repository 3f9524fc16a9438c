#include "drawing/annotation/dimension.h"
#include "drawing/annotation/labels.h"
#include "drawing/annotation/overlay.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "model/base_detail.h"
#include "model/plate.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

namespace toehold::drawing {
namespace {

constexpr double first_row_mm = 7.5, row_mm = 7.0;
/// Numbers and bars at the anchors reach this far out of a plate without framing around it.
constexpr double marks_reach_mm = 20.0;
/// The words of a push from below stand between the plate and the rows.
constexpr double push_words_mm = 4.5;

struct Axis {
    Measure measure = Measure::across;
    double low_in = 0.0, high_in = 0.0;  ///< of the plate
    double beside_in = 0.0;              ///< edge of the sheet that the rows stand beside
    double feature_in = 0.0;             ///< edge of the plate on that side
};

struct HolePlace {
    double at_in = 0.0, across_in = 0.0;
};

std::vector<HolePlace> places_along(const std::vector<model::Hole>& holes, Measure measure) {
    std::vector<HolePlace> places;
    for (const model::Hole& hole : holes) {
        const bool across = measure == Measure::across;
        places.push_back({across ? hole.center.x_in : hole.center.y_in, across ? hole.center.y_in : hole.center.x_in});
    }
    return places;
}

/// The hole of that line nearest to the rows, where its extension line begins.
double nearest_hole(const std::vector<HolePlace>& holes, double at_in, double otherwise_in) {
    constexpr double same_in = 1e-3;
    bool found = false;
    double nearest = otherwise_in;
    for (const HolePlace& hole : holes) {
        if (std::abs(hole.at_in - at_in) > same_in) continue;
        nearest = found ? std::min(nearest, hole.across_in) : hole.across_in;
        found = true;
    }
    return nearest;
}

void add_rows(Scene& scene, const Axis& axis, const std::vector<model::Hole>& holes, double start_mm,
              units::System system) {
    constexpr std::size_t most_lines = 40;
    const std::vector<HolePlace> places = places_along(holes, axis.measure);
    std::vector<double> lines = {axis.low_in, axis.high_in};
    for (const HolePlace& hole : places) lines.push_back(hole.at_in);
    lines = distinct(std::move(lines));
    DimensionRow row{axis.measure, axis.beside_in, -start_mm, Pen::dimension, {model::PartKind::plate}};
    if (lines.size() > 2 && lines.size() <= most_lines) {
        std::vector<DimensionEnd> ends;
        std::vector<std::string> words;
        for (const double at : lines) {
            if (!ends.empty()) words.push_back(length_figure(at - ends.back().at_in, system));
            ends.push_back({at, nearest_hole(places, at, axis.feature_in)});
        }
        add_chain(scene, row, ends, words);
        row.offset_mm -= row_mm;
    }
    add_dimension(scene, row, {axis.low_in, axis.feature_in}, {axis.high_in, axis.feature_in},
                  length_figure(axis.high_in - axis.low_in, system));
}

}  // namespace

void add_plan_dimensions(Scene& scene, const PlanSheet& sheet) {
    if (sheet.outline.empty()) return;
    const Box plate = around(sheet.outline);
    const Box& shown = sheet.shown;
    const std::vector<model::Hole>& holes = on_deck(sheet.subject.detail).plate.holes;
    const bool marks_in_the_way = has_marks(sheet.subject) && shown.low.x > plate.low.x - 1.5;
    const bool pushed = sheet.subject.overlay != nullptr && sheet.subject.overlay->push.has_value();
    const double below_mm = first_row_mm + (pushed ? push_words_mm : 0.0);
    scene.margin_mm += below_mm - first_row_mm;
    add_rows(scene, {Measure::across, plate.low.x, plate.high.x, shown.low.y, plate.low.y}, holes, below_mm,
             sheet.subject.locale.system);
    const double left_mm = marks_in_the_way ? marks_reach_mm : first_row_mm;
    add_rows(scene, {Measure::upright, plate.low.y, plate.high.y, shown.low.x, plate.low.x}, holes, left_mm,
             sheet.subject.locale.system);
    if (marks_in_the_way) scene.margin_mm += marks_reach_mm - first_row_mm;
}

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
    const model::PartId part = model::anchor_part(hole.id);
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

/// Beside the hole toward the plate's middle, where neither dimensions nor marks stand.
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
        text.part = model::anchor_part(hole.id);
        scene.items.emplace_back(std::move(text));
        top_mm -= line_mm;
    }
}

void add_distances(Scene& scene, const PlanSheet& sheet, const model::Hole& hole) {
    std::vector<std::string> lines;
    for (const Measure measure : {Measure::across, Measure::upright}) {
        const std::optional<EdgeDistance> distance = add_distance(scene, sheet, hole, measure);
        if (!distance) continue;
        const format::Locale& locale = sheet.subject.locale;
        lines.push_back(format::text(format::phrase("{} {}, clear {}", measure == Measure::across ? "x" : "y",
                                                    length_figure(distance->center_in, locale.system),
                                                    length_figure(distance->clear_in, locale.system)),
                                     locale));
    }
    add_words(scene, sheet, hole, lines);
}

}  // namespace

void add_measured(Scene& scene, const PlanSheet& sheet) {
    for (const model::PartId& part : sheet.options.measured) {
        const auto& holes = on_deck(sheet.subject.detail).plate.holes;
        const auto hole = std::find_if(holes.begin(), holes.end(),
                                       [&](const model::Hole& one) { return model::anchor_part(one.id) == part; });
        if (hole == holes.end()) continue;
        add_distances(scene, sheet, *hole);
    }
}

}  // namespace toehold::drawing
