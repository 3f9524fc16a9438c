#pragma once
// What a tube carries in bending, by its metal's standard, with the little a vertical force takes of it.
#include "checks/basis/metal_basis.h"
#include "checks/post/post_foot.h"

namespace toehold::checks {

/// Usable moments about x and y, lb in, and usable axial force, lb. Both moments are the same for a round tube.
struct TubeStrength {
    double about_x_lb_in = 0.0;
    double about_y_lb_in = 0.0;
    double axial_lb = 0.0;
    std::string clause;
    std::vector<Step> steps;
    std::string missing;  ///< empty when there are values
};

/// `free_height_in`: from the plate to the guard's top, without sideways support; a flagpole column (K = 2.1).
///
/// Carbon steel: AISC 360-16 F7, F8, E3, with the design wall of B4.2 and corners of twice that wall. Stainless steel:
/// compact walls only, and no more than first yield (assumption). Aluminum: Aluminum Design Manual 2020 (from memory)
/// with welded strengths and the full wall, corners square as extruded; stocky walls only.
[[nodiscard]] TubeStrength tube_strength(const PostFoot& foot, const catalog::Metal& metal, double free_height_in,
                                         const model::Basis& basis);

}  // namespace toehold::checks
