// Plan, the plate and the post on it: where they are taken hold of.
#include "editing/handles/sheet_handles.h"
#include "editing/parts/holes.h"
#include "editing/parts/measures.h"
#include "editing/parts/outline_shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::editing {
namespace {

using model::BaseDetail;
using model::Position;

/// A handle for the corner radius stands this part of the shorter side inside the corner, apart from the corner's own.
constexpr double radius_inset = 0.03;

void add_slot_ends(std::vector<Handle>& handles, const model::Hole& hole, const model::PartId& part) {
    const auto* slot = std::get_if<model::Slot>(&hole.shape);
    if (slot == nullptr) return;
    const double angle = slot->angle_deg * std::numbers::pi / 180.0;
    const drawing::Point half{0.5 * slot->length_in * std::cos(angle), 0.5 * slot->length_in * std::sin(angle)};
    const drawing::Point center = point(hole.center);
    handles.push_back({{HandleKind::slot_end, part, 0}, {center.x + half.x, center.y + half.y}});
    handles.push_back({{HandleKind::slot_end, part, 1}, {center.x - half.x, center.y - half.y}});
}

const model::PartId the_plate{model::PartKind::plate};

void add_corners_and_sides(std::vector<Handle>& handles, const model::Outline& outline) {
    const std::vector<Position> all = corners(outline);
    for (std::size_t index = 0; index < all.size(); ++index)
        handles.push_back({{HandleKind::corner, the_plate, index}, point(all[index])});
    for (std::size_t index = 0; index < all.size(); ++index) {
        const Position from = all[index], to = all[(index + 1) % all.size()];
        const drawing::Point middle{0.5 * (from.x_in + to.x_in), 0.5 * (from.y_in + to.y_in)};
        handles.push_back({{HandleKind::side, the_plate, index}, middle, normal_of_side(outline, index)});
    }
}

void add_radius(std::vector<Handle>& handles, const model::Outline& outline) {
    if (const auto* circle = std::get_if<model::CircleOutline>(&outline)) {
        const drawing::Point at{circle->center.x_in + 0.5 * circle->diameter_in, circle->center.y_in};
        handles.push_back({{HandleKind::radius, the_plate}, at, drawing::Point{1.0, 0.0}});
    }
    if (const auto* rectangle = std::get_if<model::RectangleOutline>(&outline)) {
        const double inset_in =
            radius_inset * std::min(rectangle->width_in, rectangle->depth_in) + rectangle->corner_radius_in;
        const drawing::Point corner = extent_of(outline).high;
        constexpr double diagonal = -1.0 / std::numbers::sqrt2;
        handles.push_back({{HandleKind::radius, the_plate},
                           {corner.x - inset_in, corner.y - inset_in},
                           drawing::Point{diagonal, diagonal}});
    }
}

model::Outline with_radius(const model::Outline& outline, const Grip& grip) {
    if (const auto* circle = std::get_if<model::CircleOutline>(&outline)) {
        model::CircleOutline after = *circle;
        const double radius_in = to_step(std::abs(grip.to.x - circle->center.x_in), grip.rules.step_in);
        after.diameter_in = at_least(2.0 * radius_in, 0.25);
        return after;
    }
    const auto* rectangle = std::get_if<model::RectangleOutline>(&outline);
    if (rectangle == nullptr) return outline;
    model::RectangleOutline after = *rectangle;
    const double shorter_in = std::min(rectangle->width_in, rectangle->depth_in);
    const drawing::Point corner = extent_of(outline).high;
    const double inset_in = 0.5 * (corner.x - grip.to.x + corner.y - grip.to.y);
    const double radius_in = to_step(inset_in - radius_inset * shorter_in, grip.rules.step_in);
    after.corner_radius_in = std::min(at_least(radius_in, 0.0), 0.5 * shorter_in);
    return after;
}

}  // namespace

std::vector<Handle> plate_handles(const BaseDetail& detail) {
    std::vector<Handle> handles;
    for (const model::Hole& hole : on_deck(detail).plate.holes) {
        const model::PartId part = model::anchor_part(hole.id);
        handles.push_back({{HandleKind::hole, part}, point(hole.center)});
        add_slot_ends(handles, hole, part);
    }
    add_corners_and_sides(handles, on_deck(detail).plate.outline);
    add_radius(handles, on_deck(detail).plate.outline);
    const double half_x = half_post_in(detail.post, model::PlanAxis::x);
    const double half_y = half_post_in(detail.post, model::PlanAxis::y);
    handles.push_back(post_face(model::PlanAxis::x, {half_x, 0.0}, {1.0, 0.0}));
    handles.push_back(post_face(model::PlanAxis::y, {0.0, half_y}, {0.0, 1.0}));
    return handles;
}

Moved drag_radius(const Grip& grip) {
    Moved moved = unmoved(grip);
    const model::Outline& before = on_deck(grip.detail).plate.outline;
    on_deck(moved.detail).plate.outline = with_radius(before, grip);
    own_plate(moved.detail);
    moved.step = std::holds_alternative<model::CircleOutline>(before) ? phrase("Change plate diameter")
                                                                      : phrase("Change corner radius");
    std::vector<Handle> now;
    add_radius(now, on_deck(moved.detail).plate.outline);
    if (!now.empty()) moved.at = now.front().at;
    return moved;
}

}  // namespace toehold::editing
