#pragma once
// The part of `validate` that concerns anchors: each group's own numbers, and which holes or places it fills.
#include "model/base_detail.h"
#include "model/problem_list.h"

namespace toehold::model {

void check_anchors(ProblemList& problems, const BaseDetail& detail);

}  // namespace toehold::model
