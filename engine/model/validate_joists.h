#pragma once
// The part of `validate` that concerns the joists and what holds their ends: rims and supports.
#include "model/framing.h"
#include "model/problem_list.h"

namespace toehold::model {

void check_joists(ProblemList& problems, const Joists& joists);
void check_rims(ProblemList& problems, const Framing& framing);
void check_supports(ProblemList& problems, const Framing& framing);

}  // namespace toehold::model
