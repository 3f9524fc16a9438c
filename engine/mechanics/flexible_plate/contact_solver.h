#pragma once
// Newton's method on a convex, piecewise quadratic energy: which one-way springs work, until that set reproduces
// itself.
//
// With a set of working springs the energy is quadratic and its lowest state is one linear solve. A state whose working
// springs are that set is the answer. Otherwise the step is taken as far as the true energy falls along it, found
// exactly because its slope along a line is monotone; so the energy falls at every step and no set can come back. A
// full step that leaves the set unchanged is accepted without asking the energy, where round-off would only stall it.
// A spring that stands at its very beginning works or not, and makes no force either way: sets that differ in such
// springs alone are one.
#include "mechanics/flexible_plate/one_way_springs.h"

#include <Eigen/Core>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

namespace toehold::mechanics {

struct PlateState {
    Eigen::Vector3d rigid = Eigen::Vector3d::Zero();  ///< lift, tilt_x, tilt_y of the post's foot
    Eigen::VectorXd elastic;                          ///< in the system's own coordinates
    Eigen::VectorXd lift;                             ///< at every spring
    [[nodiscard]] Eigen::VectorXd all() const {
        Eigen::VectorXd both(rigid.size() + elastic.size());
        both << rigid, elastic;
        return both;
    }
};

using ActiveSet = std::vector<char>;

struct ContactSolution {
    PlateState state;
    bool converged = false;
    int iterations = 0;
};

[[nodiscard]] inline ActiveSet active_set(const ScaledSprings& springs, const Eigen::VectorXd& lift) {
    ActiveSet active(static_cast<std::size_t>(lift.size()));
    const Eigen::VectorXd stretch = springs.stretch(lift);
    for (std::size_t i = 0; i < active.size(); ++i) active[i] = stretch(static_cast<Eigen::Index>(i)) > 0.0 ? 1 : 0;
    return active;
}

/// Whether the sets differ in springs alone whose force there would be nothing beside the largest.
[[nodiscard]] inline bool alike(const ActiveSet& one, const ActiveSet& other, const ScaledSprings& springs,
                                const Eigen::VectorXd& lift) {
    if (one == other) return true;
    constexpr double nothing = 1e-12;
    const Eigen::VectorXd force = springs.stiffness.cwiseProduct(springs.stretch(lift));
    const double largest = std::max(0.0, force.maxCoeff());
    for (std::size_t i = 0; i < one.size(); ++i) {
        if (one[i] != other[i] && std::abs(force(static_cast<Eigen::Index>(i))) > nothing * largest) return false;
    }
    return true;
}

/// How far from 0 to 1 to go: where `slope(part)`, monotone and downward at 0, reaches zero.
template <class Slope>
[[nodiscard]] double step_length(const Slope& slope) {
    if (slope(1.0) <= 0.0) return 1.0;
    double low = 0.0, high = 1.0;
    constexpr int halvings = 60;
    for (int i = 0; i < halvings; ++i) (slope(0.5 * (low + high)) <= 0.0 ? low : high) = 0.5 * (low + high);
    return 0.5 * (low + high);
}

/// `System` gives `std::optional<PlateState> equilibrium(const ActiveSet&, const Eigen::Vector3d& from)`, where `from`
/// is where the rigid body stands and stays as far as nothing moves or holds it, and `double energy_product(a, b)` of
/// two elastic states. `active` is where to start, and holds the answer's set at the end.
template <class System>
[[nodiscard]] ContactSolution solve_contact(System& system, const ScaledSprings& springs, const Eigen::Vector3d& load,
                                            ActiveSet& active) {
    constexpr int most_iterations = 200;
    ContactSolution result;
    while (result.iterations < most_iterations) {
        ++result.iterations;
        std::optional<PlateState> next = system.equilibrium(active, result.state.rigid);
        if (!next) return result;
        ActiveSet next_active = active_set(springs, next->lift);
        result.converged = alike(next_active, active, springs, next->lift);
        if (!result.converged && result.iterations > 1) {
            const PlateState& from = result.state;
            const Eigen::VectorXd step = next->elastic - from.elastic, lift_step = next->lift - from.lift;
            const double at_start = system.energy_product(from.elastic, step),
                         of_step = system.energy_product(step, step);
            const double work = load.dot(next->rigid - from.rigid);
            const double part = step_length([&](double at) {
                const Eigen::VectorXd stretch = springs.stretch(from.lift + at * lift_step).cwiseMax(0.0);
                const double of_springs =
                    springs.stiffness.cwiseProduct(stretch).dot(springs.sign.cwiseProduct(lift_step));
                return at_start + at * of_step + of_springs - work;
            });
            if (part < 1.0) {
                next->rigid = from.rigid + part * (next->rigid - from.rigid);
                next->elastic = from.elastic + part * step;
                next->lift = from.lift + part * lift_step;
                next_active = active_set(springs, next->lift);
            }
        }
        result.state = std::move(*next);
        if (result.converged) return result;
        active = std::move(next_active);
    }
    return result;
}

}  // namespace toehold::mechanics
