#pragma once
// What a post fastened to the side of a member is itself made of: the post's shape, its notch or bracket, the layers, a
// stringer's slope, the boards.
#include "model/base_detail.h"
#include "model/problem_list.h"

namespace toehold::model {

void check_side_parts(ProblemList& problems, const BaseDetail& detail, const SideFastened& mount);

}  // namespace toehold::model
