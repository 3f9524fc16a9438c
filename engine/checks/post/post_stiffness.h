#pragma once
// How far a post bends by itself at its top under a push, and what play it has in what holds it.
#include "checks/result.h"

#include <optional>
#include <vector>

namespace toehold::catalog {
struct Resolved;
}

namespace toehold::checks {

/// E I, lb in2, for a push along y (bent about x) and along x.
struct Stiffness {
    double about_x_lb_in2 = 0.0, about_y_lb_in2 = 0.0;
};

struct PostStiffness {
    Stiffness post;
    std::optional<Stiffness> stub;  ///< below `stub_in`, where the post slides over one
    double stub_in = 0.0;           ///< height of the stub's top above the bearing plane
    double play_rad = 0.0;          ///< turn from upright until the post touches what it overlaps at both ends
    std::vector<Step> steps;
};

/// Absent: a wood post of no known grade.
[[nodiscard]] std::optional<PostStiffness> post_stiffness(const catalog::Resolved& resolved);

/// At `top_in` for a force at `load_in`, both above the bearing plane, where the post is held; along the push, whose
/// square of the component along y is `along_y`. in.
[[nodiscard]] double bent_in(const PostStiffness& post, double force_lb, double load_in, double top_in, double along_y);

}  // namespace toehold::checks
