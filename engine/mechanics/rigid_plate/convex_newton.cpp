#include "mechanics/rigid_plate/convex_newton.h"

#include "mechanics/convex/line_search.h"

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace toehold::mechanics {
namespace {

constexpr int most_iterations = 100;
constexpr int most_line_points = 80;
/// Error at which a step is no longer searched along: there round-off, not the energy, decides a line search.
constexpr double close_enough = 1e-11;
/// Error that cannot be improved on.
constexpr double exact = 1e-15;
/// A plate moved this many times what the total stiffness would let it move has no digits left to balance with.
constexpr double out_of_reach = 1e14;

double error_of(const EnergyAt& energy) { return energy.gradient.cwiseAbs().maxCoeff() / energy.total_force; }

/// Solves hessian x = right with the eigenvalues held at or above a tiny part of the largest, so that a motion nothing
/// resists yet gets a long step instead of a division by zero.
Eigen::Vector3d solve_held_off_zero(const Eigen::Matrix3d& hessian, const Eigen::Vector3d& right) {
    constexpr double smallest_part = 1e-14;
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> eigen(hessian);
    const double largest = eigen.eigenvalues()[2];
    const double floor = largest > 0.0 ? smallest_part * largest : 1.0;
    const Eigen::Vector3d held = eigen.eigenvalues().cwiseMax(floor);
    return eigen.eigenvectors() * (eigen.eigenvectors().transpose() * right).cwiseQuotient(held);
}

Eigen::Vector3d cold_start(const ScaledPlate& plate) { return solve_held_off_zero(full_hessian(plate), plate.load); }

/// The lowest point on the ray through q, if the load does work along it and something resists it.
std::optional<Eigen::Vector3d> best_on_ray(const ScaledPlate& plate, const Eigen::Vector3d& q) {
    if (!q.allFinite()) return std::nullopt;
    const double work = plate.load.dot(q);
    const double resisted = (energy_at(plate, q).gradient + plate.load).dot(q);
    if (!(work > 0.0) || !(resisted > 0.0)) return std::nullopt;
    const Eigen::Vector3d best = q * (work / resisted);
    return best.allFinite() ? std::optional<Eigen::Vector3d>(best) : std::nullopt;
}

}  // namespace

Minimum minimize_energy(const ScaledPlate& plate, const Eigen::Vector3d* start) {
    std::optional<Eigen::Vector3d> warm;
    if (start != nullptr) warm = best_on_ray(plate, *start);
    Eigen::Vector3d q = warm ? *warm : cold_start(plate);
    Minimum best{q, std::numeric_limits<double>::infinity(), 0.0, 0};
    for (int iteration = 0; iteration <= most_iterations && q.allFinite(); ++iteration) {
        const EnergyAt energy = energy_at(plate, q);
        const double error = error_of(energy);
        const bool stalled = best.error <= close_enough && error > 0.5 * best.error;
        best.iterations = iteration;
        best.furthest = std::max(best.furthest, q.norm());
        if (error < best.error) {
            best.q = q;
            best.error = error;
        }
        if (best.error <= exact || stalled || best.furthest > out_of_reach) break;
        const Eigen::Vector3d direction = -solve_held_off_zero(energy.hessian, energy.gradient);
        const double slope = energy.gradient.dot(direction);
        const bool searches = error > close_enough;
        const auto slope_along = [&](double step) {
            return energy_at(plate, q + step * direction).gradient.dot(direction);
        };
        q += (searches ? step_down(slope_along, slope, most_line_points) : 1.0) * direction;
    }
    return best;
}

}  // namespace toehold::mechanics
