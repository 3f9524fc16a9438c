// A block where one is wanted.
#include "editing/edits.h"
#include "editing/edits/result.h"
#include "editing/mounts/mount.h"
#include "editing/parts/measures.h"
#include "editing/parts/members.h"
#include "model/placement.h"
#include "model/validate.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::editing {
namespace {

using model::BaseDetail;
using model::Block;
using model::PlanAxis;
using model::Position;

/// A 4x8 on edge, in: where no other block says what blocks are here.
constexpr double first_width_in = 3.5, first_depth_in = 7.25;

double away_in(const Block& block, Position at) {
    const double along = along_part(block.along, at), across = across_part(block.along, at);
    const double beyond_end = std::max({block.from_in - along, along - block.to_in, 0.0});
    return std::hypot(beyond_end, across - block.across_in);
}

const Block* nearest_block(const std::vector<Block>& blocks, Position at) {
    const auto nearest = std::min_element(blocks.begin(), blocks.end(), [&](const Block& one, const Block& other) {
        return away_in(one, at) < away_in(other, at);
    });
    return nearest == blocks.end() ? nullptr : &*nearest;
}

Block first_block(const model::Joists& joists) {
    Block block;
    block.width_in = first_width_in;
    block.depth_in = first_depth_in;
    block.species = joists.species;
    block.grade = joists.grade;
    return block;
}

/// The joists on either side of a place across them; nullptr where there is none on that side.
struct Bay {
    const model::Joist* lower = nullptr;
    const model::Joist* upper = nullptr;
};

Bay bay_at(const model::Joists& joists, double across_in) {
    Bay bay;
    for (const model::Joist& joist : joists.members) {
        const bool below = joist.offset_in <= across_in;
        if (below && (bay.lower == nullptr || joist.offset_in > bay.lower->offset_in)) bay.lower = &joist;
        if (!below && (bay.upper == nullptr || joist.offset_in < bay.upper->offset_in)) bay.upper = &joist;
    }
    return bay;
}

}  // namespace

Edit add_block(const BaseDetail& detail, Position at) {
    if (!hand_tools(detail).framing)
        return refused(detail, phrase("This drawing shows no framing from above: add blocks by their fields."));
    if (!std::isfinite(at.x_in) || !std::isfinite(at.y_in)) return refused(detail, not_a_place());
    if (!detail.framing.joists || detail.framing.joists->members.empty())
        return refused(detail, phrase("A block spans between joists, and no joists are described."));
    if (detail.framing.blocks.size() >= model::most_members)
        return refused(detail, phrase("The framing has as many blocks as it may have."));
    const model::Joists& joists = *detail.framing.joists;
    const Bay bay = bay_at(joists, across_part(joists.along, at));
    if (bay.lower == nullptr || bay.upper == nullptr)
        return refused(detail, phrase("A block spans between two joists, and on one side of this place is none."));
    const Block* const like = nearest_block(detail.framing.blocks, at);
    Block block = like != nullptr ? *like : first_block(joists);
    block.id = free_member_id(detail.framing, "B");
    block.along = joists.along == PlanAxis::y ? PlanAxis::x : PlanAxis::y;
    block.from_in = bay.lower->offset_in + 0.5 * joists.width_in * bay.lower->plies;
    block.to_in = bay.upper->offset_in - 0.5 * joists.width_in * bay.upper->plies;
    block.across_in = bounded(across_part(block.along, at));
    block.from_end.joist = bay.lower->id;
    block.to_end.joist = bay.upper->id;
    if (!(block.to_in >= block.from_in + shortest_length_in))
        return refused(detail, phrase("There is no room for a block between these joists."));
    BaseDetail after = detail;
    after.framing.blocks.push_back(block);
    return done(std::move(after), phrase("Add block {}", block.id), {model::PartId{model::PartKind::block, block.id}});
}

}  // namespace toehold::editing
