// One hole or several, each for itself: adding, moving, slots.
#include "editing/parts/holes.h"
#include "editing/edits.h"
#include "editing/edits/result.h"
#include "editing/parts/measures.h"
#include "editing/parts/members.h"
#include "editing/parts/outline_shape.h"
#include "model/part.h"

#include <cmath>

namespace toehold::editing {
namespace {

using model::BaseDetail;
using model::Position;

/// Of a plate without any hole: over a 3/8 in anchor by 1/16 in (common practice).
constexpr double first_hole_in = 7.0 / 16.0;
const Phrase not_movable = phrase("Only holes, blocks, joists and the outline's corners can be moved.");
const Phrase no_hole = phrase("Select a hole first.");
const Phrase no_number = phrase("That is not a place.");

bool is_finite(Position at) { return std::isfinite(at.x_in) && std::isfinite(at.y_in); }

void move_block(model::Block& block, Position step) {
    const double along = along_part(block.along, step), across = across_part(block.along, step);
    const double length = block.to_in - block.from_in;
    block.from_in = bounded(block.from_in + along);
    block.to_in = block.from_in + length;
    block.across_in = bounded(block.across_in + across);
}

/// What of a step of the hand a block follows: across itself, since its ends stand against joists.
Position across_only(const model::Block& block, Position step) {
    return in_plan(block.along, 0.0, across_part(block.along, step));
}

/// Parts in the order they were given, without those that cannot be moved.
std::vector<model::PartId> others_moved(const BaseDetail& before, const BaseDetail& after,
                                        const std::vector<model::PartId>& parts) {
    std::vector<model::PartId> moved;
    for (const model::PartId& part : parts) {
        const model::Block* const block = block_of(before.framing, part);
        const model::Joist* const joist = joist_of(before.framing, part);
        if (block != nullptr && *block != *find_block(after.framing, part.id)) moved.push_back(part);
        if (joist != nullptr && *joist != *find_joist(after.framing, part.id)) moved.push_back(part);
    }
    return moved;
}

void nudge_corners(BaseDetail& detail, const std::vector<model::PartId>& parts, Position step,
                   std::vector<model::PartId>& moved) {
    for (const model::PartId& part : parts) {
        const std::optional<std::size_t> corner = corner_index(on_deck(detail).plate.outline, part);
        if (!corner) continue;
        const Position at = corners(on_deck(detail).plate.outline)[*corner];
        on_deck(detail).plate.outline =
            with_corner_at(on_deck(detail).plate.outline, *corner, {at.x_in + step.x_in, at.y_in + step.y_in});
        own_plate(detail);
        moved.push_back(part);
    }
}

}  // namespace

Edit add_hole(const BaseDetail& detail, Position at) {
    if (!is_finite(at)) return refused(detail, no_number);
    if (on_deck(detail).plate.holes.size() >= most_holes)
        return refused(detail, phrase("The plate has as many holes as it may have."));
    BaseDetail after = detail;
    const std::string like = nearest_hole(on_deck(detail).plate, at);
    model::Hole hole =
        like.empty() ? model::Hole{{}, {}, model::RoundHole{first_hole_in}} : *find_hole(on_deck(detail).plate, like);
    hole.center = at;
    const std::string id = add_hole_like(after, hole, like);
    return done(std::move(after), phrase("Add hole {}", id), {model::anchor_part(id)});
}

Edit nudge(const BaseDetail& detail, const std::vector<model::PartId>& parts, double dx_in, double dy_in) {
    const Position step{dx_in, dy_in};
    if (!is_finite(step)) return refused(detail, no_number);
    BaseDetail after = detail;
    const std::vector<std::string> holes = holes_among(detail, parts);
    for (const std::string& id : holes) {
        model::Hole& hole = *find_hole(on_deck(after).plate, id);
        hole.center = bounded(Position{hole.center.x_in + dx_in, hole.center.y_in + dy_in});
        own_plate(after);
    }
    for (const std::string& id : blocks_among(detail, parts)) {
        model::Block& block = *find_block(after.framing, id);
        move_block(block, across_only(block, step));
    }
    for (const std::string& id : joists_among(detail, parts)) {
        const double offset = find_joist(after.framing, id)->offset_in;
        move_joist(after.framing, id, offset + across_part(after.framing.joists->along, step));
    }
    std::vector<model::PartId> others = others_moved(detail, after, parts);
    nudge_corners(after, parts, step, others);
    if (holes.empty() && others.empty()) {
        const bool framing = !blocks_among(detail, parts).empty() || !joists_among(detail, parts).empty();
        return refused(detail, framing ? phrase("Blocks and joists move across themselves only.") : not_movable);
    }
    return done(std::move(after), phrase("Move {}", things(holes, others)), parts);
}

std::optional<Position> place_of(const BaseDetail& detail, const model::PartId& part) {
    if (const model::Hole* hole = hole_of(detail, part)) return hole->center;
    if (const model::Block* block = block_of(detail.framing, part)) return middle(*block);
    if (const std::optional<std::size_t> corner = corner_index(on_deck(detail).plate.outline, part))
        return corners(on_deck(detail).plate.outline)[*corner];
    return std::nullopt;
}

Edit place_at(const BaseDetail& detail, const model::PartId& part, Position at) {
    if (!is_finite(at)) return refused(detail, no_number);
    const std::optional<Position> before = place_of(detail, part);
    if (!before) return refused(detail, phrase("This part has no place that can be typed."));
    BaseDetail after = detail;
    Phrase what = model::part_name(part);
    if (part.kind == model::PartKind::anchor) {
        find_hole(on_deck(after).plate, part.id)->center = bounded(at);
        own_plate(after);
        what = model::part_name(model::hole_part(part.id));
    } else if (part.kind == model::PartKind::block) {
        move_block(*find_block(after.framing, part.id), {at.x_in - before->x_in, at.y_in - before->y_in});
    } else {
        const std::size_t corner = corner_index(on_deck(detail).plate.outline, part).value();
        on_deck(after).plate.outline = with_corner_at(on_deck(after).plate.outline, corner, at);
        own_plate(after);
    }
    return done(std::move(after), phrase("Move {}", what), {part});
}

Edit to_slot(const BaseDetail& detail, const std::vector<model::PartId>& parts, double length_in, double angle_deg) {
    const std::vector<std::string> holes = holes_among(detail, parts);
    if (holes.empty()) return refused(detail, no_hole);
    if (!std::isfinite(length_in) || !std::isfinite(angle_deg))
        return refused(detail, phrase("A slot needs a length and an angle."));
    BaseDetail after = detail;
    for (const std::string& id : holes) {
        model::Hole& hole = *find_hole(on_deck(after).plate, id);
        const double width = width_in(hole);
        if (!(length_in > width)) return refused(detail, phrase("A slot is longer than it is wide."));
        hole.shape = model::Slot{bounded(length_in), width, slot_angle(angle_deg)};
    }
    own_plate(after);
    return done(std::move(after), phrase("Slot {}", things(holes, {})), parts);
}

Edit to_round(const BaseDetail& detail, const std::vector<model::PartId>& parts) {
    BaseDetail after = detail;
    std::vector<std::string> slots;
    for (const std::string& id : holes_among(detail, parts)) {
        model::Hole& hole = *find_hole(on_deck(after).plate, id);
        if (!std::holds_alternative<model::Slot>(hole.shape)) continue;
        hole.shape = model::RoundHole{width_in(hole)};
        slots.push_back(id);
    }
    if (slots.empty()) return refused(detail, phrase("Select a slot first."));
    own_plate(after);
    return done(std::move(after), phrase("Round {}", things(slots, {})), parts);
}

}  // namespace toehold::editing
