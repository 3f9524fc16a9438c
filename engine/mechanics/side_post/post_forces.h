#pragma once
// From the post's motion to what people ask for: forces with their places, what passes along the post, residuals.
// Worked from the motion anew, by forces and arms, not from the energy's own slope.
#include "mechanics/side_post/post_model.h"

namespace toehold::mechanics::side_post {

/// Fills all of `solution` but its status, iterations and whether the post is free to move.
void find_forces(SidePostSolution& solution, const PostModel& model, const Unknowns& at,
                 std::span<const PostLoad> loads);

}  // namespace toehold::mechanics::side_post
