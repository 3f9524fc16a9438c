#pragma once
// Newton's method on the post's energy, certain to go downhill at every step: as rigid_plate/convex_newton.h says, with
// the elastic unknowns taken out first. Their curvature is always above 0; of what is left, six by six, the eigenvalues
// are kept off zero, so that a motion which nothing resists yet gets a long step instead of a division by zero, and one
// which the load does not drive either gets none.
#include "mechanics/side_post/post_energy.h"

namespace toehold::mechanics::side_post {

struct PostMinimum {
    Unknowns at;
    double error = 0.0;         ///< largest part of the slope over all forces added up, of elastic unknowns a hundredth
    double furthest_in = 0.0;   ///< largest rigid motion tried
    bool free_to_move = false;  ///< some rigid motion is neither resisted nor driven at the end
    int iterations = 0;
    std::vector<double> energies_lb_in;  ///< at each step, the first included
};

[[nodiscard]] PostMinimum minimize_energy(const PostModel& model);
/// The same from a motion of one's own: the answer's forces are the same (a test starts far off).
[[nodiscard]] PostMinimum minimize_energy_from(const PostModel& model, Unknowns start);

/// How far the supports would let the post move under the load with everything in contact: what `furthest_in` is
/// measured against.
[[nodiscard]] double ordinary_motion_in(const PostModel& model);

}  // namespace toehold::mechanics::side_post
