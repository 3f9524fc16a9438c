#include "drawing/annotation/labels.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "model/segment.h"
#include "paper/cutting/plate_contours.h"
#include "paper/shop/callouts.h"
#include "paper/shop/views.h"

#include "drawing/render/lettering.h"

#include <algorithm>
#include <cmath>

namespace toehold::paper::shop {
namespace {

using drawing::Box;
using drawing::DimensionEnd;
using drawing::DimensionRow;
using drawing::Measure;
using drawing::Pen;
using drawing::Point;
using drawing::Scene;

constexpr double first_row_mm = 7.0, second_row_mm = 13.5, callout_off_mm = 12.0;

double along(const model::Position& at, Measure measure) { return measure == Measure::across ? at.x_in : at.y_in; }
double aside(const model::Position& at, Measure measure) { return measure == Measure::across ? at.y_in : at.x_in; }

using Axis = RowAxis;

/// Edge to hole, hole to hole, hole to edge; extension lines begin at the hole nearest to the row.
std::vector<DimensionEnd> hole_ends(const Axis& axis, const std::vector<model::Hole>& holes) {
    constexpr double same_in = 1e-3;
    std::vector<double> lines = {axis.low_in, axis.high_in};
    for (const model::Hole& hole : holes) lines.push_back(along(hole.center, axis.measure));
    std::vector<DimensionEnd> ends;
    for (const double at : drawing::distinct(std::move(lines))) {
        DimensionEnd end{at, axis.edge_in.value_or(axis.beside_in)};
        bool found = false;
        for (const model::Hole& hole : holes) {
            if (std::abs(along(hole.center, axis.measure) - at) > same_in) continue;
            const double here = aside(hole.center, axis.measure);
            if (!found || axis.sign * here > axis.sign * end.feature_in) end.feature_in = here;
            found = true;
        }
        ends.push_back(end);
    }
    return ends;
}

/// A polygon's corners, for rows on the sides that the holes' rows leave free; none where all are outermost.
std::vector<DimensionEnd> corner_ends(const model::PolygonOutline& polygon, const Axis& axis) {
    constexpr double same_in = 1e-3;
    std::vector<double> lines;
    for (const model::Position& corner : polygon.corners) lines.push_back(along(corner, axis.measure));
    std::vector<DimensionEnd> ends;
    for (const double at : drawing::distinct(std::move(lines))) {
        DimensionEnd end{at, axis.beside_in};
        bool found = false;
        for (const model::Position& corner : polygon.corners) {
            if (std::abs(along(corner, axis.measure) - at) > same_in) continue;
            const double here = aside(corner, axis.measure);
            if (!found || axis.sign * here > axis.sign * end.feature_in) end.feature_in = here;
            found = true;
        }
        ends.push_back(end);
    }
    return ends.size() > 2 ? ends : std::vector<DimensionEnd>{};
}

bool square_cornered(const model::PolygonOutline& polygon) {
    constexpr double same_in = 1e-6;
    const std::vector<model::Segment> sides = model::sides(polygon.corners);
    return std::all_of(sides.begin(), sides.end(), [](const model::Segment& side) {
        return std::abs(side.from.x_in - side.to.x_in) < same_in || std::abs(side.from.y_in - side.to.y_in) < same_in;
    });
}

/// False where sides run aslant or corners are too close together for words.
bool add_corner_rows(Scene& scene, const ViewSubject& subject, const Box& plate) {
    constexpr double corner_row_mm = 7.0;
    const auto* const polygon = std::get_if<model::PolygonOutline>(&on_deck(subject.resolved.detail).plate.outline);
    if (polygon == nullptr) return true;
    if (!square_cornered(*polygon)) return false;
    bool all = true;
    for (const Axis& axis : {Axis{Measure::across, plate.low.x, plate.high.x, plate.low.y, -1.0},
                             Axis{Measure::upright, plate.low.y, plate.high.y, plate.high.x, 1.0}}) {
        const std::vector<DimensionEnd> ends = corner_ends(*polygon, axis);
        const DimensionRow row{axis.measure,   axis.beside_in,           axis.sign * corner_row_mm,
                               Pen::dimension, {model::PartKind::plate}, true};
        if (!ends.empty() && !add_fitting_chain(scene, row, ends, subject.drafting)) all = false;
    }
    return all;
}

/// By which the schedule of corners names them; inside the plate, where no dimension stands.
void add_corner_numbers(Scene& scene, const model::Outline& outline) {
    constexpr double inward_mm = 3.2;
    const auto& corners = std::get<model::PolygonOutline>(outline).corners;
    const Point middle = drawing::middle(outline_box_in(outline));
    for (std::size_t index = 0; index < corners.size(); ++index) {
        const Point inward{middle.x - corners[index].x_in, middle.y - corners[index].y_in};
        const double length = std::max(1e-9, std::hypot(inward.x, inward.y));
        drawing::Text text;
        text.at = drawing::standing({corners[index].x_in, corners[index].y_in},
                                    {inward_mm * inward.x / length, inward_mm * inward.y / length});
        text.words = std::to_string(index + 1);
        text.size = drawing::TextSize::fine;
        text.across = drawing::Across::middle;
        text.upright = drawing::Upright::middle;
        text.pen = Pen::dimension;
        scene.items.emplace_back(std::move(text));
    }
}

void add_axis_lines(Scene& scene, const Box& plate) {
    constexpr double beyond_mm = 3.0;
    if (plate.low.y < 0.0 && plate.high.y > 0.0)
        scene.items.emplace_back(drawing::line(drawing::standing({plate.low.x, 0.0}, {-beyond_mm, 0.0}),
                                               drawing::standing({plate.high.x, 0.0}, {beyond_mm, 0.0}), Pen::center));
    if (plate.low.x < 0.0 && plate.high.x > 0.0)
        scene.items.emplace_back(drawing::line(drawing::standing({0.0, plate.low.y}, {0.0, -beyond_mm}),
                                               drawing::standing({0.0, plate.high.y}, {0.0, beyond_mm}), Pen::center));
}

/// Holes so close together that ids beside them would meet.
bool crowded(const std::vector<model::Hole>& holes, double mm_per_in) {
    constexpr double id_mm = 13.0, line_mm = 6.0;
    for (std::size_t one = 0; one < holes.size(); ++one) {
        for (std::size_t other = one + 1; other < holes.size(); ++other) {
            const double x = std::abs(holes[one].center.x_in - holes[other].center.x_in) * mm_per_in;
            const double y = std::abs(holes[one].center.y_in - holes[other].center.y_in) * mm_per_in;
            if (x < id_mm && y < line_mm) return true;
        }
    }
    return false;
}

}  // namespace

void add_hole_rows(Scene& scene, const model::Plate& plate, const Drafting& drafting, const RowAxis& axis) {
    DimensionRow row{axis.measure, axis.beside_in, axis.sign * first_row_mm, Pen::dimension, {model::PartKind::plate}};
    if (!plate.holes.empty() && add_fitting_chain(scene, row, hole_ends(axis, plate.holes), drafting))
        row.offset_mm = axis.sign * second_row_mm;
    const bool round = std::holds_alternative<model::CircleOutline>(plate.outline);
    const std::string words =
        (round ? "\u2300 " : "") + drawing::length_figure(axis.high_in - axis.low_in, drafting.locale.system);
    const double edge_in = axis.edge_in.value_or(axis.beside_in);
    add_measure(scene, row, {axis.low_in, edge_in}, {axis.high_in, edge_in}, words, drafting);
}

void add_hole_ids(Scene& scene, const std::vector<model::Hole>& holes, double mm_per_in) {
    const bool small = crowded(holes, mm_per_in);
    for (const model::Hole& hole : holes) {
        const bool to_the_right = hole.center.x_in < 0.0;
        const Extent across = extent(hole, model::PlanAxis::x), upright = extent(hole, model::PlanAxis::y);
        drawing::Text text;
        text.at = drawing::standing({to_the_right ? across.high_in : across.low_in, hole.center.y_in},
                                    {to_the_right ? 1.0 : -1.0, 2.2});
        text.across = to_the_right ? drawing::Across::left : drawing::Across::right;
        text.upright = drawing::Upright::middle;
        text.size = drawing::TextSize::normal;
        if (small) {
            text.at = drawing::standing({hole.center.x_in, upright.high_in}, {0.0, 2.2});
            text.across = drawing::Across::middle;
            text.size = drawing::TextSize::fine;
        }
        text.words = hole.id;
        text.bold = true;
        text.part = model::anchor_part(hole.id);
        scene.items.emplace_back(std::move(text));
    }
}

namespace {

void add_datum(Scene& scene, const model::Outline& outline, const Box& plate) {
    if (std::holds_alternative<model::CircleOutline>(outline)) return;
    scene.items.emplace_back(
        drawing::Circle{drawing::standing(plate.low), 0.0, 0.8, Pen::outline, drawing::Fill::none, {}});
    drawing::Text text;
    text.at = drawing::standing(plate.low, {-3.0, -1.0});
    text.words = "0,0";
    text.size = drawing::TextSize::fine;
    text.across = drawing::Across::right;
    text.upright = drawing::Upright::top;
    text.pen = Pen::dimension;
    scene.items.emplace_back(std::move(text));
}

double right_reach_mm(const model::Outline& outline) {
    return callout_off_mm + (has_inner_corners(outline) ? corners_reach_mm : 0.0);
}

}  // namespace

bool has_inner_corners(const model::Outline& outline) {
    const auto* const polygon = std::get_if<model::PolygonOutline>(&outline);
    return polygon != nullptr && polygon->corners.size() > 3;
}

bool corners_are_dimensioned(const ViewSubject& subject) {
    Scene tried;
    return add_corner_rows(tried, subject, outline_box_in(on_deck(subject.resolved.detail).plate.outline));
}

double callouts_reach_mm(const ViewSubject& subject) {
    const model::Plate& plate = on_deck(subject.resolved.detail).plate;
    double widest = 0.0;
    for (const Callout& callout : callouts(plate, subject.drafting.locale))
        widest = std::max(widest, drawing::text_width_mm(callout.words, {drawing::TextSize::small, false, false}));
    return right_reach_mm(plate.outline) + widest + 2.0;
}

Scene plan_view(const ViewSubject& subject) {
    const model::BaseDetail& detail = subject.resolved.detail;
    const drawing::Subject drawn{detail, nullptr, nullptr, subject.drafting.locale};
    const drawing::PlanOptions options{false, false, {}};
    const drawing::PlanSheet sheet = drawing::plan_sheet(drawn, options);
    const Box plate = outline_box_in(on_deck(detail).plate.outline);
    Scene scene;
    scene.name = "Plan";
    scene.bounds = plate;
    drawing::add_plate_face(scene, sheet);
    drawing::add_plate_edge(scene, sheet);
    drawing::add_weld(scene, sheet);
    drawing::add_post(scene, sheet);
    add_axis_lines(scene, plate);
    drawing::add_holes(scene, sheet);
    add_hole_ids(scene, on_deck(detail).plate.holes, subject.drafting.mm_per_in);
    add_datum(scene, on_deck(detail).plate.outline, plate);
    add_hole_rows(scene, on_deck(detail).plate, subject.drafting,
                  {Measure::across, plate.low.x, plate.high.x, plate.high.y, 1.0});
    add_hole_rows(scene, on_deck(detail).plate, subject.drafting,
                  {Measure::upright, plate.low.y, plate.high.y, plate.low.x, -1.0});
    add_callouts(scene, callouts(on_deck(detail).plate, subject.drafting.locale), plate.high.x,
                 right_reach_mm(on_deck(detail).plate.outline), subject.drafting.mm_per_in);
    if (!add_corner_rows(scene, subject, plate)) add_corner_numbers(scene, on_deck(detail).plate.outline);
    return drawing::finished(std::move(scene));
}

}  // namespace toehold::paper::shop
