#pragma once
// The part of `validate` that concerns layers and framing.
#include "model/framing.h"
#include "model/layers.h"
#include "model/problem_list.h"

#include <string>

namespace toehold::model {

void check_layers(ProblemList& problems, const Layers& layers);
/// The deck boards, which stand in `element`.
void check_decking(ProblemList& problems, const std::string& element, const Decking& decking);
void check_framing(ProblemList& problems, const Framing& framing);

/// The section of one piece of a member.
void check_section(ProblemList& problems, double width_in, double depth_in);
void check_plies(ProblemList& problems, int plies);
/// The ends of a member or of a row of them, along itself.
void check_ends(ProblemList& problems, double from_in, double to_in);

}  // namespace toehold::model
