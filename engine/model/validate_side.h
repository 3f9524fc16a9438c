#pragma once
// What must hold of a post fastened to the side of a member: of the mount against its member and the framing behind it.
// What the mount itself is made of stands in validate_side_parts.h.
#include "model/base_detail.h"
#include "model/problem_list.h"

namespace toehold::model {

/// How far a member's near face may stand from where the post's contact face with bracket and layers ends, in: as a
/// tape reads.
inline constexpr double side_fit_in = 0.0625;

void check_side(ProblemList& problems, const BaseDetail& detail, const SideFastened& mount);

/// One group of its anchors, at the element the problems are now at.
void check_anchors_on_side(ProblemList& problems, const BaseDetail& detail, const AnchorGroup& group);

}  // namespace toehold::model
