// The plate's outline, thickness, and the places of its outer rows of anchors.
#include "study/fields/groups.h"

#include "model/base_detail.h"

#include <algorithm>
#include <cmath>

namespace toehold::study {
namespace {

using format::Phrase;
using format::phrase;
using model::BaseDetail;
using model::PlanAxis;
using model::Position;
using model::RectangleOutline;

double& coordinate(Position& at, PlanAxis axis) { return axis == PlanAxis::x ? at.x_in : at.y_in; }
double& extent(RectangleOutline& outline, PlanAxis axis) {
    return axis == PlanAxis::x ? outline.width_in : outline.depth_in;
}

/// The plate's edges and its outermost rows of holes, along one axis.
struct Rows {
    double low_edge = 0.0, high_edge = 0.0, low = 0.0, high = 0.0;
    [[nodiscard]] double low_distance() const { return low - low_edge; }
    [[nodiscard]] double high_distance() const { return high_edge - high; }
};

Rows rows_of(model::Plate plate, PlanAxis axis) {
    auto& outline = std::get<RectangleOutline>(plate.outline);
    const double middle = coordinate(outline.center, axis), half = 0.5 * extent(outline, axis);
    Rows rows{middle - half, middle + half, middle + half, middle - half};
    for (model::Hole& hole : plate.holes) {
        rows.low = std::min(rows.low, coordinate(hole.center, axis));
        rows.high = std::max(rows.high, coordinate(hole.center, axis));
    }
    return rows;
}

/// The outermost rows go to new places, the rows between in proportion. One row alone stays.
Phrase move_rows(model::Plate& plate, PlanAxis axis, const Rows& from, double low, double high) {
    if (!(from.high > from.low)) return {};
    if (!(high > low)) return phrase("the rows of anchors would meet");
    for (model::Hole& hole : plate.holes) {
        double& at = coordinate(hole.center, axis);
        at = low + (at - from.low) * (high - low) / (from.high - from.low);
    }
    return {};
}

Phrase resize(BaseDetail& detail, PlanAxis axis, double size_in) {
    model::Plate& plate = own_plate(detail);
    const Rows before = rows_of(plate, axis);
    auto& outline = std::get<RectangleOutline>(plate.outline);
    extent(outline, axis) = size_in;
    const double larger_by = 0.5 * (size_in - (before.high_edge - before.low_edge));
    return move_rows(plate, axis, before, before.low - larger_by, before.high + larger_by);
}

void add_size(FieldList& list, const model::Plate& plate, PlanAxis axis) {
    const auto& outline = std::get<RectangleOutline>(plate.outline);
    const bool x = axis == PlanAxis::x;
    Field field;
    field.id = x ? "plate-width" : "plate-depth";
    field.name = x ? phrase("plate width (along the rail)") : phrase("plate depth (across the rail)");
    field.help = phrase("About the plate's center; the outer rows of anchors keep their edge distance, blocks stay.");
    field.now = x ? outline.width_in : outline.depth_in;
    field.step = 0.5;
    field.range = about(*field.now, field.step);
    add(list, std::move(field), [axis](BaseDetail& made, double value) { return resize(made, axis, value); });
}

void add_edge_distance(FieldList& list, const model::Plate& plate, PlanAxis axis) {
    constexpr double same_in = 1e-6;
    const Rows rows = rows_of(plate, axis);
    if (!(rows.high > rows.low) || std::abs(rows.low_distance() - rows.high_distance()) > same_in) return;
    const bool x = axis == PlanAxis::x;
    Field field;
    field.id = x ? "edge-x" : "edge-y";
    field.name =
        x ? phrase("edge distance of anchors (along the rail)") : phrase("edge distance of anchors (across the rail)");
    field.help = phrase("From the outer rows of anchors, on both sides, to the plate's edges; plate and blocks stay.");
    field.now = rows.low_distance();
    field.step = 0.125;
    field.range = about(*field.now, field.step);
    add(list, std::move(field), [axis](BaseDetail& made, double value) {
        model::Plate& own = own_plate(made);
        const Rows before = rows_of(own, axis);
        return move_rows(own, axis, before, before.low_edge + value, before.high_edge - value);
    });
}

void add_diameter(FieldList& list, const model::CircleOutline& circle) {
    Field field;
    field.id = "plate-diameter";
    field.name = phrase("plate diameter");
    field.help = phrase("About the plate's center; the anchors keep their edge distance, blocks stay.");
    field.now = circle.diameter_in;
    field.step = 0.5;
    field.range = about(*field.now, field.step);
    add(list, std::move(field), [](BaseDetail& made, double value) {
        model::Plate& plate = own_plate(made);
        auto& outline = std::get<model::CircleOutline>(plate.outline);
        const double larger_by = 0.5 * (value - outline.diameter_in);
        outline.diameter_in = value;
        for (model::Hole& hole : plate.holes) {
            const double dx = hole.center.x_in - outline.center.x_in, dy = hole.center.y_in - outline.center.y_in;
            const double radius = std::hypot(dx, dy);
            if (!(radius > 0.0)) continue;
            if (!(radius + larger_by > 0.0)) return phrase("the anchors would meet");
            hole.center = {outline.center.x_in + dx * (1.0 + larger_by / radius),
                           outline.center.y_in + dy * (1.0 + larger_by / radius)};
        }
        return Phrase();
    });
}

void add_thickness(FieldList& list, const model::Plate& plate) {
    constexpr double least_in = 0.1875, most_in = 1.0;
    Field field;
    field.id = "plate-thickness";
    field.name = phrase("plate thickness");
    field.help = phrase("Anchors of a stated length reach less deep by as much as it grows.");
    field.now = plate.thickness_in;
    field.step = 0.0625;
    field.range = {std::min(least_in, plate.thickness_in), std::max(most_in, plate.thickness_in)};
    add(list, std::move(field), [](BaseDetail& made, double value) {
        own_plate(made).thickness_in = value;
        return Phrase();
    });
}

}  // namespace

model::Plate& own_plate(BaseDetail& detail) {
    on_deck(detail).plate_reference.reset();
    return on_deck(detail).plate;
}

void add_plate_fields(FieldList& list, const Subject& subject) {
    const auto* const mount = std::get_if<model::PlateOnDeck>(&subject.resolved.detail.mount);
    if (mount == nullptr) return;
    const model::Plate& plate = mount->plate;
    if (std::holds_alternative<RectangleOutline>(plate.outline)) {
        for (const PlanAxis axis : {PlanAxis::x, PlanAxis::y}) add_size(list, plate, axis);
    }
    if (const auto* const circle = std::get_if<model::CircleOutline>(&plate.outline)) add_diameter(list, *circle);
    add_thickness(list, plate);
    if (std::holds_alternative<RectangleOutline>(plate.outline)) {
        for (const PlanAxis axis : {PlanAxis::x, PlanAxis::y}) add_edge_distance(list, plate, axis);
    }
}

}  // namespace toehold::study
