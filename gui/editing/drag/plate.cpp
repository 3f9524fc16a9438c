// Plan, by hand: holes, slots, the outline's corners and sides.
#include "editing/handles/sheet_handles.h"
#include "editing/parts/holes.h"
#include "editing/parts/measures.h"
#include "editing/parts/outline_shape.h"
#include "editing/snap/catch_lines.h"

#include <cmath>
#include <numbers>

namespace toehold::editing {
namespace {

using model::Position;

constexpr double right_angle_part_deg = 15.0;  ///< slots catch on multiples of it

/// Other corners and the post's axes.
std::vector<CatchLine> corner_lines(const model::Plate& plate, std::size_t moving, Direction direction) {
    std::vector<CatchLine> lines{post_axis(plate, direction)};
    const std::vector<Position> all = corners(plate.outline);
    for (std::size_t index = 0; index < all.size(); ++index) {
        if (index == moving) continue;
        const drawing::Point at = point(all[index]);
        const double place = coordinate(at, direction);
        const format::Phrase name = model::part_name(model::corner_part(index));
        lines.push_back({place, at, phrase("in line with {}", name), 0});
        lines.push_back({-place, with_coordinate(at, direction, -place), phrase("mirror of {}", name), 0});
    }
    return lines;
}

double snapped_angle(double angle_deg, double reach_from_center_in, const SnapRules& rules) {
    const double round_deg = to_step(angle_deg, right_angle_part_deg);
    const double off_in = reach_from_center_in * std::abs(angle_deg - round_deg) * std::numbers::pi / 180.0;
    return rules.on && off_in <= rules.reach_in ? round_deg : angle_deg;
}

/// How far the side moves so that it comes to stand on a step: of its own coordinate where it lies along an axis, of
/// the distance moved where it lies aslant.
double side_step(drawing::Point normal, drawing::Point at, double along_in, const SnapRules& rules) {
    constexpr double square = 1.0 - 1e-9;
    const bool on_axis = std::abs(normal.x) > square || std::abs(normal.y) > square;
    const double place_in = on_axis ? normal.x * at.x + normal.y * at.y : 0.0;
    return to_step(place_in + along_in, rules.step_in) - place_in;
}

}  // namespace

Moved drag_hole(const Grip& grip) {
    Moved moved = unmoved(grip);
    const std::string id = grip.handle.id.part.id;
    model::Hole* const hole = find_hole(on_deck(moved.detail).plate, id);
    if (hole == nullptr) return moved;
    const Snapped snapped = snap(grip.to, on_deck(grip.detail).plate, id, grip.rules);
    hole->center = bounded(position(snapped.at));
    own_plate(moved.detail);
    moved.step = phrase("Move hole {}", id);
    moved.at = point(hole->center);
    moved.caught = snapped.lines;
    return moved;
}

Moved drag_slot_end(const Grip& grip) {
    Moved moved = unmoved(grip);
    const std::string id = grip.handle.id.part.id;
    model::Hole* const hole = find_hole(on_deck(moved.detail).plate, id);
    auto* const slot = hole == nullptr ? nullptr : std::get_if<model::Slot>(&hole->shape);
    if (slot == nullptr) return moved;
    const double dx = grip.to.x - hole->center.x_in, dy = grip.to.y - hole->center.y_in;
    const double from_center_in = std::hypot(dx, dy);
    const double turned_deg = grip.handle.id.number == 1 ? 180.0 : 0.0;
    double end_deg = slot->angle_deg + turned_deg;
    if (from_center_in > shortest_length_in)
        end_deg = snapped_angle(std::atan2(dy, dx) * 180.0 / std::numbers::pi, from_center_in, grip.rules);
    slot->length_in = at_least(to_step(2.0 * from_center_in, grip.rules.step_in), slot->width_in + shortest_length_in);
    slot->angle_deg = std::remainder(end_deg - turned_deg, 360.0);
    own_plate(moved.detail);
    moved.step = phrase("Turn slot {}", id);
    const double angle = end_deg * std::numbers::pi / 180.0;
    moved.at = {hole->center.x_in + 0.5 * slot->length_in * std::cos(angle),
                hole->center.y_in + 0.5 * slot->length_in * std::sin(angle)};
    return moved;
}

Moved drag_corner(const Grip& grip) {
    Moved moved = unmoved(grip);
    const model::Plate& plate = on_deck(grip.detail).plate;
    const std::size_t corner = grip.handle.id.number;
    if (corner >= corners(plate.outline).size()) return moved;
    const Snapped snapped = snap_to(grip.to, corner_lines(plate, corner, Direction::x),
                                    corner_lines(plate, corner, Direction::y), grip.rules);
    on_deck(moved.detail).plate.outline = with_corner_at(plate.outline, corner, position(snapped.at));
    own_plate(moved.detail);
    moved.step = phrase("Move {}", model::part_name(model::corner_part(corner)));
    moved.at = point(corners(on_deck(moved.detail).plate.outline)[corner]);
    if (moved.at == snapped.at) moved.caught = snapped.lines;
    return moved;
}

Moved drag_side(const Grip& grip) {
    Moved moved = unmoved(grip);
    const model::Outline& outline = on_deck(grip.detail).plate.outline;
    const std::vector<Position> before = corners(outline);
    const std::size_t side = grip.handle.id.number;
    if (side >= before.size()) return moved;
    const std::size_t next = (side + 1) % before.size();
    const drawing::Point normal = normal_of_side(outline, side);
    const drawing::Point from = point(before[side]);
    const double along_in = (grip.to.x - from.x) * normal.x + (grip.to.y - from.y) * normal.y;
    on_deck(moved.detail).plate.outline = with_side_moved(outline, side, side_step(normal, from, along_in, grip.rules));
    own_plate(moved.detail);
    moved.step = phrase("Move side {}", side + 1);
    const std::vector<Position> after = corners(on_deck(moved.detail).plate.outline);
    moved.at = {0.5 * (after[side].x_in + after[next].x_in), 0.5 * (after[side].y_in + after[next].y_in)};
    return moved;
}

}  // namespace toehold::editing
