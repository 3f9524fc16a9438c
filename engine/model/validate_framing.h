#pragma once
// The part of `validate` that concerns layers, joists and blocks.
#include "model/framing.h"
#include "model/problem_list.h"

namespace toehold::model {

void check_layers(ProblemList& problems, const Layers& layers);
void check_framing(ProblemList& problems, const Framing& framing);

}  // namespace toehold::model
