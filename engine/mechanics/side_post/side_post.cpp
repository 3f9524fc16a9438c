#include "mechanics/side_post/side_post.h"

#include "mechanics/side_post/input_check.h"
#include "mechanics/side_post/load_feasibility.h"
#include "mechanics/side_post/post_forces.h"
#include "mechanics/side_post/post_newton.h"

namespace toehold::mechanics {
namespace side_post {
namespace {

/// Largest residuals of a solution that may be called one.
constexpr double most_unbalanced = 1e-9, most_elastic = 1e-7;
/// At the very edge of what can be balanced, contact shrinks to a line or a point, or the forces have next to no arm,
/// and the post moves without bounds. A minimum that misses the residuals and lies this many times further off than the
/// supports would let the post go, or than what holds it is high, is called what it is in practice: no equilibrium.
constexpr double out_of_bounds = 1e4, out_of_place = 100.0;

bool in_balance(const SidePostSolution& solution) {
    const Residuals& residuals = solution.residuals;
    return residuals.force <= most_unbalanced && residuals.moment <= most_unbalanced &&
           residuals.complementarity <= most_unbalanced && solution.elastic_residual <= most_elastic;
}

bool ran_off(const PostModel& model, const PostMinimum& minimum) {
    return minimum.furthest_in > out_of_bounds * ordinary_motion_in(model) ||
           minimum.at.head<rigid_freedoms>().cwiseAbs().maxCoeff() > out_of_place * model.length_in();
}

/// What stays of a solve that gave no answer.
SidePostSolution without_answer(SolveStatus status, const SidePostSolution& of) {
    SidePostSolution bare;
    bare.status = status;
    bare.residuals = of.residuals;
    bare.elastic_residual = of.elastic_residual;
    bare.iterations = of.iterations;
    bare.nodes = of.nodes;
    return bare;
}

}  // namespace
}  // namespace side_post

SidePostSolution solve_side_post(const SidePost& post, std::span<const PostLoad> loads, double fineness) {
    side_post::check_input(post, loads, fineness);
    const side_post::PostModel model(post, loads, fineness);
    SidePostSolution solution;
    if (const auto motion = side_post::unresisted_motion(model)) {
        const side_post::Vector6& m = *motion;
        solution.status = SolveStatus::no_equilibrium;
        solution.unresisted = UnresistedMotion{{m(0), m(1), m(2)}, {m(3), m(4), m(5)}};
        return solution;
    }
    const side_post::PostMinimum minimum = side_post::minimize_energy(model);
    side_post::find_forces(solution, model, minimum.at, loads);
    solution.iterations = minimum.iterations;
    solution.free_to_move = minimum.free_to_move;
    if (side_post::in_balance(solution)) {
        solution.status = SolveStatus::solved;
        return solution;
    }
    const bool balanced_by_nothing = side_post::ran_off(model, minimum);
    return side_post::without_answer(balanced_by_nothing ? SolveStatus::no_equilibrium : SolveStatus::not_converged,
                                     solution);
}

}  // namespace toehold::mechanics
