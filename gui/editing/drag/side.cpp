// A post on a member's side, by hand: fasteners on the face, their heights and lengths in the section, the post's lower
// end.
#include "editing/handles/sheet_handles.h"
#include "editing/parts/anchor_places.h"
#include "editing/parts/fastener_length.h"
#include "editing/parts/measures.h"
#include "editing/parts/side_fasteners.h"
#include "editing/snap/face_lines.h"

namespace toehold::editing {
namespace {

Moved moved_fastener(const Grip& grip, const Snapped& snapped) {
    Moved moved = unmoved(grip);
    const std::string& id = grip.handle.id.part.id;
    put_anchor(moved.detail, id, position(snapped.at));
    moved.step = phrase("Move fastener {}", id);
    moved.caught = snapped.lines;
    return moved;
}

Moved drag_place(const Grip& grip) {
    const std::string& id = grip.handle.id.part.id;
    if (!anchor_place(grip.detail, id)) return unmoved(grip);
    Moved moved = moved_fastener(grip, snap_on_face(grip.to, grip.detail, id, grip.rules));
    moved.at = point(anchor_place(moved.detail, id).value());
    return moved;
}

/// In the section a fastener moves up and down, and its head stays where it bears.
Moved drag_height(const Grip& grip) {
    const std::string& id = grip.handle.id.part.id;
    const std::optional<model::Position> before = anchor_place(grip.detail, id);
    if (!before) return unmoved(grip);
    Snapped snapped = snap_on_face({before->x_in, grip.to.y}, grip.detail, id, grip.rules);
    snapped.at.x = before->x_in;
    snapped.lines.clear();  // they lie on the face, which this drawing sees from its edge
    Moved moved = moved_fastener(grip, snapped);
    moved.at = {grip.handle.at.x, anchor_place(moved.detail, id)->y_in};
    return moved;
}

Moved drag_level_tip(const Grip& grip) {
    Moved moved = unmoved(grip);
    model::AnchorGroup* const group = group_of(moved.detail, grip.handle.id.part.id);
    if (group == nullptr || !length_in(group->fastener)) return moved;
    const LevelFastener lies = level_fastener(grip.detail);
    const double to_in = lies.towards_y * (grip.to.x - lies.head_y_in);
    const double under_head_in = at_least(to_step(to_in, grip.rules.step_in), shortest_anchor_in);
    set_length(group->fastener, under_head_in);
    moved.step = phrase("Change anchor length");
    moved.at = {lies.head_y_in + lies.towards_y * under_head_in, grip.handle.at.y};
    return moved;
}

Moved drag_post_bottom(const Grip& grip) {
    Moved moved = unmoved(grip);
    const double below_in = at_least(to_step(-grip.to.y, grip.rules.step_in), shortest_length_in);
    on_side(moved.detail).post_bottom_below_top_in = below_in;
    moved.step = phrase("Move the post's lower end");
    moved.at = {grip.handle.at.x, -below_in};
    return moved;
}

}  // namespace

Moved drag_on_face(const Grip& grip) {
    switch (grip.handle.id.kind) {
        case HandleKind::hole:
            return drag_place(grip);
        case HandleKind::post_bottom:
            return drag_post_bottom(grip);
        case HandleKind::post_width:
            return drag_post_width(grip, Sheet::plan);
        default:
            return unmoved(grip);
    }
}

Moved drag_in_side_section(const Grip& grip, const drawing::SectionPlane& plane) {
    switch (grip.handle.id.kind) {
        case HandleKind::hole:
            return drag_height(grip);
        case HandleKind::anchor_tip:
            return drag_level_tip(grip);
        case HandleKind::post_bottom:
            return drag_post_bottom(grip);
        case HandleKind::block_width:
            return drag_block_width(grip, plane);
        case HandleKind::block_depth:
            return drag_block_depth(grip, 0.0);
        default:
            return unmoved(grip);
    }
}

}  // namespace toehold::editing
