// Whole posts solved a second way (spring_model.h): another discretization, and a general-purpose interior-point
// program in place of the search for contact. The spring model's bed is sums at middles: with 10, 20 and
// 40 springs across, the upper bolt's pull in the second case is 180.53, 181.32 and 181.52 lb, with twelve rows of 16
// and 32 a piece 181.17 and 181.47, which leads to 181.58; the engine's refined mesh gives 181.57.
#include "mechanics/side_post/posts.h"
#include "mechanics/side_post/spring_model.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>

using namespace toehold::mechanics;
using namespace toehold::test;

namespace {

constexpr int steps = 37, across = 14;

void check_both_ways(const SidePost& post, const std::vector<PostLoad>& loads, int springs_across = across) {
    const SidePostSolution found = solve_side_post(post, loads);
    REQUIRE(found.status == SolveStatus::solved);
    const SpringModelForces other = solve_as_springs(post, loads, steps, springs_across);
    double largest = 0.0;
    for (const PostFastenerForce& force : found.fasteners)
        largest = std::max({largest, force.tension_lb, std::abs(force.slip_x_lb)});
    const double absolute = 2e-3 * largest;
    for (std::size_t i = 0; i < found.fasteners.size(); ++i) {
        CHECK_CLOSE(found.fasteners[i].tension_lb, other.tension_lb[i], 0.0, absolute);
        CHECK_CLOSE(found.fasteners[i].slip_x_lb, other.slip_x_lb[i], 0.0, absolute);
    }
    for (std::size_t i = 0; i < found.bearings.size(); ++i)
        CHECK_CLOSE(found.bearings[i].force_lb, other.bearing_lb[i], 0.0, absolute);
    for (std::size_t i = 0; i < loads.size(); ++i) {
        const SpaceVector moved = found.at_loads[i].moved_in;
        const double size = 2e-3 * std::max({std::abs(moved.x), std::abs(moved.y), std::abs(moved.z)});
        CHECK_CLOSE(moved.x, other.top_in[i].x, 0.0, size);
        CHECK_CLOSE(moved.y, other.top_in[i].y, 0.0, size);
        CHECK_CLOSE(moved.z, other.top_in[i].z, 0.0, size);
    }
}

}  // namespace

TEST_CASE("Outward and inward, the interior-point program finds the same forces", "[cross-solver]") {
    for (const double pushed : {200.0, -200.0}) check_both_ways(four_by_four(), push(four_by_four(), 0.0, pushed), 1);
}

TEST_CASE("Oblique, twisting and down, the interior-point program finds the same forces", "[cross-solver]") {
    const SidePost post = two_columns();
    check_both_ways(post, push(post, 141.0, 141.0));
    check_both_ways(post, {{{1.0, 4.0, top_in}, {-120.0, 90.0, -200.0}, {0.0, 0.0, 500.0}}});
}

TEST_CASE("On a member that rolls, with play and a block behind, the interior-point program finds the same forces",
          "[cross-solver]") {
    SidePost post = two_columns();
    post.bodies = one_body({0.0, -0.75, 5.0}, {1e5, 4e4, 1e5, 8e5, 3e6, 2e6});
    post.bodies.stiffness[1 * 6 + 3] = post.bodies.stiffness[3 * 6 + 1] = 6e4;
    post.bearings[0].body = 0;
    for (PostFastener& fastener : post.fasteners) fastener.body = 0;
    post.fasteners[0].body.reset();
    post.fasteners[3].gap_in = 0.03;
    post.bearings[0].gap_in = 0.01;
    post.bearings.push_back({-1.75, 1.75, 6.0, 9.25, 5e3, 0.05, PostSide::back, std::nullopt});
    check_both_ways(post, push(post, 100.0, 180.0));
}
