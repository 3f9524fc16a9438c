// Plan, by hand: blocks across themselves, their ends, joists.
#include "editing/handles/sheet_handles.h"
#include "editing/parts/measures.h"
#include "editing/parts/members.h"
#include "editing/snap/catch_lines.h"

#include <algorithm>
#include <cmath>

namespace toehold::editing {
namespace {

using model::PlanAxis;

Direction direction_across(PlanAxis axis) { return axis == PlanAxis::x ? Direction::y : Direction::x; }

/// Rows of holes, the post's axis, the mirror images of other blocks that run the same way.
std::vector<CatchLine> block_lines(const model::BaseDetail& detail, const model::Block& moving) {
    const Direction direction = direction_across(moving.along);
    std::vector<CatchLine> lines = hole_lines(on_deck(detail).plate, {}, direction);
    lines.push_back(post_axis(on_deck(detail).plate, direction));
    for (const model::Block& block : detail.framing.blocks) {
        if (block.id == moving.id || block.along != moving.along) continue;
        const drawing::Point image = with_coordinate(point(middle(block)), direction, -block.across_in);
        lines.push_back({-block.across_in, image, phrase("mirror of block {}", block.id), 0});
    }
    return lines;
}

struct Caught {
    double at_in = 0.0;
    const CatchLine* line = nullptr;
};

Caught caught(const std::vector<CatchLine>& lines, double value_in, const SnapRules& rules) {
    const CatchLine* const line = nearest(lines, value_in, rules);
    return {line != nullptr ? line->at_in : to_step(value_in, rules.step_in), line};
}

}  // namespace

Moved drag_block(const Grip& grip) {
    Moved moved = unmoved(grip);
    const std::string id = grip.handle.id.part.id;
    model::Block* const block = find_block(moved.detail.framing, id);
    if (block == nullptr) return moved;
    const std::vector<CatchLine> lines = block_lines(grip.detail, *block);
    const Caught stop = caught(lines, across_part(block->along, position(grip.to)), grip.rules);
    block->across_in = bounded(stop.at_in);
    moved.step = phrase("Move block {}", id);
    moved.at = point(middle(*block));
    if (stop.line != nullptr) moved.caught.push_back({stop.line->shown, moved.at, stop.line->why});
    return moved;
}

Moved drag_block_end(const Grip& grip) {
    Moved moved = unmoved(grip);
    const std::string id = grip.handle.id.part.id;
    model::Block* const block = find_block(moved.detail.framing, id);
    if (block == nullptr) return moved;
    const bool upper = grip.handle.id.number == 1;
    double end_in = along_part(block->along, position(grip.to));
    const std::optional<Face> face = face_at(grip.detail.framing, *block, upper, end_in);
    end_in = face ? face->at_in : to_step(end_in, grip.rules.step_in);
    const double shortest_end_in = upper ? block->from_in + shortest_length_in : block->to_in - shortest_length_in;
    const bool too_short = upper ? end_in < shortest_end_in : end_in > shortest_end_in;
    if (too_short) end_in = shortest_end_in;
    (upper ? block->to_in : block->from_in) = end_in;
    if (face && !too_short) (upper ? block->to_end : block->from_end).joist = face->member;
    moved.step = phrase("Move end of block {}", id);
    moved.at = point(in_plan(block->along, end_in, block->across_in));
    if (face && !too_short) {
        const double half = 0.5 * total_width_in(*block);
        moved.caught.push_back({point(in_plan(block->along, end_in, block->across_in - half)),
                                point(in_plan(block->along, end_in, block->across_in + half)),
                                phrase("against {}", face->member)});
    }
    return moved;
}

Moved drag_joist(const Grip& grip) {
    Moved moved = unmoved(grip);
    const std::string id = grip.handle.id.part.id;
    if (find_joist(grip.detail.framing, id) == nullptr) return moved;
    const PlanAxis along = grip.detail.framing.joists->along;
    const Direction direction = direction_across(along);
    std::vector<CatchLine> lines{post_axis(on_deck(grip.detail).plate, direction)};
    for (const model::Joist& joist : grip.detail.framing.joists->members) {
        if (joist.id == id) continue;
        const drawing::Point image = point(in_plan(along, 0.0, -joist.offset_in));
        lines.push_back({-joist.offset_in, image, phrase("mirror of joist {}", joist.id), 0});
    }
    const Caught stop = caught(lines, across_part(along, position(grip.to)), grip.rules);
    move_joist(moved.detail.framing, id, stop.at_in);
    const double offset_in = find_joist(moved.detail.framing, id)->offset_in;
    moved.step = phrase("Move joist {}", id);
    moved.at = with_coordinate(grip.handle.at, direction, offset_in);
    if (stop.line != nullptr && offset_in == stop.at_in)
        moved.caught.push_back({stop.line->shown, moved.at, stop.line->why});
    return moved;
}

}  // namespace toehold::editing
