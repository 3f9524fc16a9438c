#pragma once
// What a fastener catches on where it stands up a post's side.
#include "editing/snap.h"

#include <string>

namespace toehold::editing {

/// On the post's axis, the lines of other fasteners, their mirror images in the axis, and as far from the member's
/// bottom edge as another stands from its top. `moving`: the one under the hand, left out; empty: none.
[[nodiscard]] Snapped snap_on_face(drawing::Point to, const model::BaseDetail& detail, const std::string& moving,
                                   const SnapRules& rules);

}  // namespace toehold::editing
