// Moving parts by a step or to a place: anchors in their mount's drawing, framing in plan, corners of the outline.
#include "editing/edits.h"
#include "editing/edits/result.h"
#include "editing/parts/anchor_places.h"
#include "editing/parts/holes.h"
#include "editing/parts/measures.h"
#include "editing/parts/members.h"
#include "editing/parts/outline_shape.h"

#include <cmath>

namespace toehold::editing {
namespace {

using model::BaseDetail;
using model::Position;

bool is_finite(Position at) { return std::isfinite(at.x_in) && std::isfinite(at.y_in); }
bool is_finite(const model::Place& step) {
    return std::isfinite(step.x_in) && std::isfinite(step.y_in) && std::isfinite(step.z_in);
}

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

void nudge_anchors(BaseDetail& detail, const std::vector<std::string>& anchors, const model::Place& step) {
    const Position by = anchor_step(detail, step);
    for (const std::string& id : anchors) {
        const Position at = anchor_place(detail, id).value();
        put_anchor(detail, id, {at.x_in + by.x_in, at.y_in + by.y_in});
    }
}

void nudge_framing(BaseDetail& detail, const std::vector<model::PartId>& parts, Position step) {
    for (const std::string& id : blocks_among(detail, parts)) {
        model::Block& block = *find_block(detail.framing, id);
        move_block(block, across_only(block, step));
    }
    for (const std::string& id : joists_among(detail, parts)) {
        const double offset = find_joist(detail.framing, id)->offset_in;
        move_joist(detail.framing, id, offset + across_part(detail.framing.joists->along, step));
    }
}

void put_corner(BaseDetail& detail, std::size_t corner, Position at) {
    model::Plate& plate = *shaped_plate(detail);
    plate.outline = with_corner_at(plate.outline, corner, at);
    own_plate(detail);
}

void nudge_corners(BaseDetail& detail, const std::vector<model::PartId>& parts, Position step,
                   std::vector<model::PartId>& moved) {
    for (const model::PartId& part : parts) {
        const std::optional<std::size_t> corner = corner_of(detail, part);
        if (!corner) continue;
        const Position at = corners(shaped_plate(detail)->outline)[*corner];
        put_corner(detail, *corner, {at.x_in + step.x_in, at.y_in + step.y_in});
        moved.push_back(part);
    }
}

Phrase why_nothing_moved(const BaseDetail& detail, const std::vector<model::PartId>& parts) {
    if (!blocks_among(detail, parts).empty() || !joists_among(detail, parts).empty())
        return phrase("Blocks and joists move across themselves only.");
    return shaped_plate(detail) != nullptr
               ? phrase("Only holes, blocks, joists and the outline's corners can be moved.")
               : phrase("Only fasteners, blocks and joists can be moved.");
}

}  // namespace

Edit nudge(const BaseDetail& detail, const std::vector<model::PartId>& parts, const model::Place& step) {
    if (!is_finite(step)) return refused(detail, not_a_place());
    BaseDetail after = detail;
    const std::vector<std::string> anchors = anchors_among(detail, parts);
    nudge_anchors(after, anchors, step);
    nudge_framing(after, parts, model::in_plan(step));
    std::vector<model::PartId> others = others_moved(detail, after, parts);
    nudge_corners(after, parts, model::in_plan(step), others);
    if (anchors.empty() && others.empty()) return refused(detail, why_nothing_moved(detail, parts));
    return done(std::move(after), phrase("Move {}", things(detail, anchors, others)), parts);
}

Edit nudge(const BaseDetail& detail, const std::vector<model::PartId>& parts, double dx_in, double dy_in) {
    return nudge(detail, parts, model::Place{dx_in, dy_in, 0.0});
}

std::optional<Position> place_of(const BaseDetail& detail, const model::PartId& part) {
    if (part.kind == model::PartKind::anchor) return anchor_place(detail, part.id);
    if (const model::Block* block = block_of(detail.framing, part)) return middle(*block);
    if (const std::optional<std::size_t> corner = corner_of(detail, part))
        return corners(shaped_plate(detail)->outline)[*corner];
    return std::nullopt;
}

Edit place_at(const BaseDetail& detail, const model::PartId& part, Position at) {
    if (!is_finite(at)) return refused(detail, not_a_place());
    const std::optional<Position> before = place_of(detail, part);
    if (!before) return refused(detail, phrase("This part has no place that can be typed."));
    BaseDetail after = detail;
    Phrase what = model::part_name(part);
    if (part.kind == model::PartKind::anchor) {
        put_anchor(after, part.id, at);
        what = things(detail, {part.id}, {});
    } else if (part.kind == model::PartKind::block) {
        move_block(*find_block(after.framing, part.id), {at.x_in - before->x_in, at.y_in - before->y_in});
    } else {
        put_corner(after, corner_of(detail, part).value(), at);
    }
    return done(std::move(after), phrase("Move {}", what), {part});
}

}  // namespace toehold::editing
