#pragma once
// What can be taken by hand in each drawing, and what a drag of it makes of the detail. Places in inches of the
// drawing: plan x, y; section along its plane, z; elevation y, z. A post on a member's side has in place of the plan
// the face it lies against: x, z from the member's top edge.
#include "drawing/drawings.h"
#include "editing/snap.h"
#include "model/part.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace toehold::editing {

enum class Sheet { plan, section, elevation };

enum class HandleKind {
    hole,         ///< plan: moves the hole and its anchor; face: a fastener's place; section of a side: its height
    slot_end,     ///< plan: turns and lengthens a slot
    corner,       ///< plan: corner of a polygon, or of a rectangle (keeps the opposite corner, and stays a rectangle)
    side,         ///< plan: side of a rectangle, or of a polygon (moves both its corners)
    radius,       ///< plan: edge of a circle; corner radius of a rectangle
    block,        ///< plan: moves a block across itself
    block_end,    ///< plan: end of a block
    block_width,  ///< section: side of a block
    block_depth,  ///< section: underside of a block
    joist,        ///< plan: moves one joist, and the block ends that stand against it
    plate_thickness,    ///< section: top of the plate
    decking_thickness,  ///< section: underside of the decking (what lies below follows)
    anchor_tip,         ///< section: length of the anchor's group; a washer under its head is not counted
    post_bottom,        ///< face, and section of a side: lower end of the post
    post_width,         ///< elevation, plan and face: face of the post; a square tube stays square
    guard_height,       ///< elevation: top of the guard
};

/// Which handle of its drawing.
struct HandleId {
    HandleKind kind = HandleKind::hole;
    model::PartId part;  ///< whole; the plate for all of its outline
    /// Which of several alike, from 0: corners and sides as the outline has them; of a slot, a block or a block's width
    /// the lower end first; of the post the face across x first.
    std::size_t number = 0;
    friend bool operator==(const HandleId&, const HandleId&) = default;
};

struct Handle {
    HandleId id;
    drawing::Point at;
    /// Motion along one axis only: unit vector; absent: free.
    std::optional<drawing::Point> along = std::nullopt;
};

struct SheetPlace {
    Sheet sheet = Sheet::plan;
    drawing::SectionPlane plane;  ///< of the section
};

[[nodiscard]] std::vector<Handle> handles(const model::BaseDetail& detail, const SheetPlace& place);

struct Moved {
    model::BaseDetail detail;
    format::Phrase step;           ///< for the history: `Move hole A`
    drawing::Point at;             ///< where the handle came to stand
    std::vector<SnapLine> caught;  ///< what it snapped to
};

/// The handle taken to a point. What cannot be (a plate without area, a length of nothing) stops at the nearest that
/// can; a detail that a check or `validate` will not like is made all the same, for it to say so.
[[nodiscard]] Moved drag(const model::BaseDetail& detail, const SheetPlace& place, const Handle& handle,
                         drawing::Point to, const SnapRules& rules);

}  // namespace toehold::editing
