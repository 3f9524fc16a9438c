#pragma once
// What posts, stubs, shoes and rails of metal have in common, to be validated. Where in the file is said before.
#include "model/post.h"
#include "model/problem_list.h"

namespace toehold::model {

/// Outside sizes no more than `largest_side_in`, a wall no more than `largest_wall_in` and thinner than half the tube.
void check_tube(ProblemList& problems, double width_in, double depth_in, double wall_in, double largest_side_in,
                double largest_wall_in);
void check_certificate(ProblemList& problems, const Certificate& certificate);

}  // namespace toehold::model
