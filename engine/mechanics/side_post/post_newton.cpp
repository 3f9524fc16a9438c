#include "mechanics/side_post/post_newton.h"

#include "mechanics/convex/line_search.h"

#include <Eigen/Eigenvalues>
#include <Eigen/SparseCholesky>

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::mechanics::side_post {
namespace {

constexpr int most_steps = 100;
constexpr int most_line_places = 60;
/// Error at which round-off, not the energy, decides a line search.
constexpr double near_enough = 1e-10;
/// Error that cannot be improved on.
constexpr double as_exact_as_can_be = 1e-15;
/// A rigid motion this much softer than the stiffest is taken for one that nothing resists ...
constexpr double unresisted_part = 1e-11;
/// ... and one driven by less than this part of all forces for one that nothing drives.
constexpr double undriven_part = 1e-9;

struct NewtonStep {
    Unknowns direction;
    bool free_to_move = false;
};

/// Of the six by six that is left: -matrix^-1 slope with its eigenvalues kept off zero.
Vector6 rigid_step(const Matrix6& matrix, const Vector6& slope, double total_force, bool& free_to_move) {
    const Eigen::SelfAdjointEigenSolver<Matrix6> eigen(matrix);
    const double stiffest = eigen.eigenvalues()(5);
    const double least = stiffest > 0.0 ? unresisted_part * stiffest : 1.0;
    Vector6 step = Vector6::Zero();
    for (int i = 0; i < 6; ++i) {
        const Vector6 motion = eigen.eigenvectors().col(i);
        const double driven = motion.dot(slope), stiffness = eigen.eigenvalues()(i);
        const bool resisted = stiffness > least;
        if (!resisted && std::abs(driven) <= undriven_part * total_force) {
            free_to_move = true;
            continue;
        }
        step -= driven / std::max(stiffness, least) * motion;
    }
    return step;
}

NewtonStep newton_step(const Curvature& curvature, const Slope& slope) {
    const Eigen::Index elastic_count = slope.gradient.size() - rigid_freedoms;
    const Vector6 rigid_slope = slope.gradient.head<rigid_freedoms>();
    NewtonStep step;
    step.direction = Unknowns::Zero(slope.gradient.size());
    const Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>, Eigen::Lower> elastic(curvature.elastic);
    const Eigen::MatrixXd follows = elastic.solve(curvature.elastic_rigid);
    const Eigen::VectorXd alone = elastic.solve(slope.gradient.tail(elastic_count));
    const Matrix6 left = curvature.rigid - curvature.elastic_rigid.transpose() * follows;
    const Vector6 left_slope = rigid_slope - curvature.elastic_rigid.transpose() * alone;
    const Vector6 rigid = rigid_step(0.5 * (left + left.transpose()), left_slope, slope.total_force, step.free_to_move);
    step.direction.head<rigid_freedoms>() = rigid;
    step.direction.tail(elastic_count) = -alone - follows * rigid;
    return step;
}

/// Forces on the whole post count in full. The elastic balance is a difference of large numbers where the post is stiff
/// and its pieces short; its round-off must not hide how well the forces balance.
double error_of(const PostModel& model, const Slope& slope) {
    if (slope.total_force <= 0.0) return 0.0;
    constexpr double elastic_weight = 0.01;
    const double rigid = slope.gradient.head<rigid_freedoms>().cwiseAbs().maxCoeff();
    return std::max(rigid, elastic_weight * largest_elastic_force(model, slope)) / slope.total_force;
}

Unknowns start_in_contact(const PostModel& model) {
    const Unknowns still = Unknowns::Zero(model.unknowns());
    return newton_step(curvature_at(model, still, Contact::two_way), slope_at(model, still, Contact::two_way))
        .direction;
}

}  // namespace

double ordinary_motion_in(const PostModel& model) {
    return start_in_contact(model).head<rigid_freedoms>().cwiseAbs().maxCoeff();
}

PostMinimum minimize_energy_from(const PostModel& model, Unknowns start) {
    PostMinimum best{start, std::numeric_limits<double>::infinity(), 0.0, false, 0, {}};
    Unknowns at = std::move(start);
    int without_gain = 0;
    for (int iteration = 0; iteration <= most_steps && at.allFinite(); ++iteration) {
        const Slope slope = slope_at(model, at, Contact::one_way);
        const double error = error_of(model, slope);
        best.energies_lb_in.push_back(slope.energy_lb_in);
        best.iterations = iteration;
        best.furthest_in = std::max(best.furthest_in, at.head<rigid_freedoms>().cwiseAbs().maxCoeff());
        without_gain = error > 0.5 * best.error ? without_gain + 1 : 0;
        const NewtonStep step = newton_step(curvature_at(model, at, Contact::one_way), slope);
        if (error < best.error) {
            best.at = at;
            best.error = error;
            best.free_to_move = step.free_to_move;
        }
        if (best.error <= as_exact_as_can_be || (best.error <= near_enough && without_gain > 0)) break;
        if (best.error <= 1e3 * near_enough && without_gain > 3) break;
        const bool searches = error > near_enough;
        const auto slope_along = [&](double part) {
            return slope_at(model, at + part * step.direction, Contact::one_way).gradient.dot(step.direction);
        };
        const double part =
            searches ? step_down(slope_along, slope.gradient.dot(step.direction), most_line_places) : 1.0;
        at += part * step.direction;
    }
    return best;
}

PostMinimum minimize_energy(const PostModel& model) { return minimize_energy_from(model, start_in_contact(model)); }

}  // namespace toehold::mechanics::side_post
