#pragma once
// Framing that goes with a post on a member's side: the origin stays on the post's axis, so whatever moves the joint's
// faces moves the framing in the post's axes. Distances are in inches.
#include "model/base_detail.h"
#include "model/side_geometry.h"

namespace toehold::model {

/// All framing by as much in plan.
void move_framing(Framing& framing, Position by);

/// After a change of the post's depth, its notch, its bracket or its layers: all framing moves with the member's near
/// face. `before`: the joint as it was. Throws std::logic_error when the detail has another mount.
void framing_follows(BaseDetail& detail, const SideJoint& before);

/// Most pieces a member has side by side.
inline constexpr int most_plies = 4;
/// The pieces of the rim or joist the post lies against. Its near face stays on the post; what stands behind it moves
/// with its far face. False, and nothing is changed: it is neither, or would have fewer than 1 or more than
/// `most_plies`.
bool set_plies(BaseDetail& detail, int plies);

}  // namespace toehold::model
