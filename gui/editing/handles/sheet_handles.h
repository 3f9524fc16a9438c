#pragma once
// The handles of each sheet, and what a drag of each kind makes of the detail. A drag gets a point that is finite and
// within the largest measure, and changes nothing where its handle's part is gone.
#include "editing/handles.h"

#include <optional>
#include <vector>

namespace toehold::editing {

using format::phrase;

[[nodiscard]] std::vector<Handle> plate_handles(const model::BaseDetail& detail);
[[nodiscard]] std::vector<Handle> framing_handles(const model::BaseDetail& detail);
[[nodiscard]] std::vector<Handle> section_handles(const model::BaseDetail& detail, const drawing::SectionPlane& plane);
/// The sides and the undersides of blocks the plane cuts, their tops at `top_in`.
[[nodiscard]] std::vector<Handle> cut_block_handles(const model::Framing& framing, const drawing::SectionPlane& plane,
                                                    double top_in);
/// The same under every mount.
[[nodiscard]] std::vector<Handle> elevation_handles(const model::BaseDetail& detail);
[[nodiscard]] std::vector<Handle> face_handles(const model::BaseDetail& detail);
[[nodiscard]] std::vector<Handle> side_section_handles(const model::BaseDetail& detail,
                                                       const drawing::SectionPlane& plane);
/// The face of the post that faces along this axis.
[[nodiscard]] Handle post_face(model::PlanAxis across, drawing::Point at, drawing::Point along);
/// Half of the post's size along an axis.
[[nodiscard]] double half_post_in(const model::Post& post, model::PlanAxis axis);

/// What a drag is given.
struct Grip {
    const model::BaseDetail& detail;
    const Handle& handle;
    drawing::Point to;
    const SnapRules& rules;
};

[[nodiscard]] Moved drag_hole(const Grip& grip);
[[nodiscard]] Moved drag_slot_end(const Grip& grip);
[[nodiscard]] Moved drag_corner(const Grip& grip);
[[nodiscard]] Moved drag_side(const Grip& grip);
[[nodiscard]] Moved drag_radius(const Grip& grip);
[[nodiscard]] Moved drag_block(const Grip& grip);
[[nodiscard]] Moved drag_block_end(const Grip& grip);
[[nodiscard]] Moved drag_joist(const Grip& grip);
[[nodiscard]] Moved drag_block_width(const Grip& grip, const drawing::SectionPlane& plane);
/// The block's top is at `top_in`.
[[nodiscard]] Moved drag_block_depth(const Grip& grip, double top_in);
[[nodiscard]] Moved drag_plate_thickness(const Grip& grip);
[[nodiscard]] Moved drag_decking_thickness(const Grip& grip);
[[nodiscard]] Moved drag_anchor_tip(const Grip& grip);
[[nodiscard]] Moved drag_post_width(const Grip& grip, Sheet sheet);
[[nodiscard]] Moved drag_guard_height(const Grip& grip);
[[nodiscard]] Moved drag_in_elevation(const Grip& grip);
[[nodiscard]] Moved drag_on_face(const Grip& grip);
[[nodiscard]] Moved drag_in_side_section(const Grip& grip, const drawing::SectionPlane& plane);

/// A drag that changed nothing.
[[nodiscard]] Moved unmoved(const Grip& grip);

}  // namespace toehold::editing
