#pragma once
// The drawings of a post on a member's side: what `drawing::plan` and `section` are for that mount, and the
// view from above, which only it needs beside them.
#include "drawing/drawings.h"

namespace toehold::drawing::side {

/// The member's face with the post, its places and the anchors' marks: x to the right as in plan, z up.
[[nodiscard]] Scene face(const Subject& subject, const PlanOptions& options);
/// The joint from above, a step down past the boards: x to the right, y (outward) up.
[[nodiscard]] Scene from_above(const Subject& subject);
/// Cut along y through the post's axis.
[[nodiscard]] Scene section(const Subject& subject);

}  // namespace toehold::drawing::side
