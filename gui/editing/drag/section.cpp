// Section, by hand: blocks' sides and undersides, thicknesses, the anchors' length.
#include "editing/handles/sheet_handles.h"
#include "editing/parts/fastener_length.h"
#include "editing/parts/holes.h"
#include "editing/parts/measures.h"
#include "editing/parts/members.h"

namespace toehold::editing {
namespace {

using format::phrase;

constexpr double thinnest_block_in = 0.5;
}  // namespace

Moved drag_block_width(const Grip& grip, const drawing::SectionPlane& plane) {
    Moved moved = unmoved(grip);
    const std::string id = grip.handle.id.part.id;
    model::Block* const block = find_block(moved.detail.framing, id);
    if (block == nullptr || block->along == plane.along) return moved;
    const double sign = grip.handle.id.number == 1 ? 1.0 : -1.0;
    const double fixed_in = block->across_in - sign * 0.5 * total_width_in(*block);
    const double width_in = to_step(sign * (grip.to.x - fixed_in), grip.rules.step_in);
    block->width_in = at_least(width_in, thinnest_block_in * block->plies) / block->plies;
    block->across_in = fixed_in + sign * 0.5 * total_width_in(*block);
    moved.step = phrase("Change width of block {}", id);
    moved.at = {fixed_in + sign * total_width_in(*block), grip.handle.at.y};
    return moved;
}

Moved drag_block_depth(const Grip& grip, double top_in) {
    Moved moved = unmoved(grip);
    const std::string id = grip.handle.id.part.id;
    model::Block* const block = find_block(moved.detail.framing, id);
    if (block == nullptr) return moved;
    const double total_in = at_least(to_step(top_in - grip.to.y, grip.rules.step_in), thinnest_block_in * block->stack);
    block->depth_in = total_in / block->stack;
    moved.step = phrase("Change depth of block {}", id);
    moved.at = {grip.handle.at.x, top_in - total_in};
    return moved;
}

Moved drag_plate_thickness(const Grip& grip) {
    Moved moved = unmoved(grip);
    on_deck(moved.detail).plate.thickness_in = at_least(to_step(grip.to.y, grip.rules.step_in), shortest_length_in);
    own_plate(moved.detail);
    moved.step = phrase("Change plate thickness");
    moved.at = {grip.handle.at.x, on_deck(moved.detail).plate.thickness_in};
    return moved;
}

Moved drag_decking_thickness(const Grip& grip) {
    Moved moved = unmoved(grip);
    if (!on_deck(moved.detail).layers.decking) return moved;
    double& thickness_in = on_deck(moved.detail).layers.decking->thickness_in;
    thickness_in = at_least(to_step(-grip.to.y, grip.rules.step_in), shortest_length_in);
    moved.step = phrase("Change decking thickness");
    moved.at = {grip.handle.at.x, -thickness_in};
    return moved;
}

Moved drag_anchor_tip(const Grip& grip) {
    Moved moved = unmoved(grip);
    model::AnchorGroup* const group = group_of(moved.detail, grip.handle.id.part.id);
    if (group == nullptr || !length_in(group->fastener)) return moved;
    const double top_in = on_deck(grip.detail).plate.thickness_in;
    const double under_head_in = at_least(to_step(top_in - grip.to.y, grip.rules.step_in), shortest_anchor_in);
    set_length(group->fastener, under_head_in);
    moved.step = phrase("Change anchor length");
    moved.at = {grip.handle.at.x, top_in - under_head_in};
    return moved;
}

}  // namespace toehold::editing
