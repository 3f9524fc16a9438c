#include "mechanics/rigid_plate/load_feasibility.h"

#include <Eigen/QR>

#include <algorithm>
#include <cmath>

namespace toehold::mechanics {
namespace {

/// Calls visit(g) for every edge of the cone of loads that can be balanced; |g| >= 1.
template <typename Visit>
void for_each_generator(const ScaledPlate& plate, Visit visit) {
    for (const ScaledAnchor& anchor : plate.anchors) visit(anchor.phi);
    for (const ScaledPatch& patch : plate.patches) {
        for (const Point& corner : patch.outline) visit(Eigen::Vector3d(-1.0, -corner.x, -corner.y));
    }
}

/// At most three generators and their factors, all positive.
using Generators = Eigen::Matrix<double, 3, Eigen::Dynamic, 0, 3, 3>;
using Factors = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, 3, 1>;
struct Combination {
    Generators generators{3, 0};
    Factors factors{0};

    [[nodiscard]] Eigen::Vector3d sum() const {
        return factors.size() == 0 ? Eigen::Vector3d::Zero() : Eigen::Vector3d(generators * factors);
    }
    void append(const Eigen::Vector3d& generator) {
        generators.conservativeResize(3, generators.cols() + 1);
        generators.col(generators.cols() - 1) = generator;
        factors.conservativeResize(factors.size() + 1);
        factors[factors.size() - 1] = 0.0;
    }
    void remove(Eigen::Index index) {
        const Eigen::Index last = factors.size() - 1;
        generators.col(index) = Eigen::Vector3d(generators.col(last));
        factors[index] = factors[last];
        generators.conservativeResize(3, last);
        factors.conservativeResize(last);
    }
};

/// Moves the factors to the best fit, dropping on the way each generator whose factor would turn negative.
void refit(Combination& combination, const Eigen::Vector3d& load) {
    while (combination.factors.size() > 0) {
        const Factors best = combination.generators.colPivHouseholderQr().solve(load);
        Eigen::Index first = -1;
        double step = 1.0;
        for (Eigen::Index index = 0; index < best.size(); ++index) {
            if (best[index] > 0.0) continue;
            const double factor = combination.factors[index];
            const double share = factor > 0.0 ? factor / (factor - best[index]) : 0.0;
            if (first >= 0 && share >= step) continue;
            step = share;
            first = index;
        }
        if (first < 0) {
            combination.factors = best;
            return;
        }
        combination.factors += step * (best - combination.factors);
        combination.remove(first);
    }
}

/// The load less its nearest point in the cone: the non-negative least squares of Lawson and Hanson, Solving Least
/// Squares Problems (1974), chapter 23. Each round brings the remainder down, so it ends; the limit guards round-off.
Eigen::Vector3d remainder_outside_cone(const ScaledPlate& plate) {
    constexpr int most_rounds = 200;
    constexpr double round_off = 1e-14;
    Combination combination;
    Eigen::Vector3d remainder = plate.load;
    for (int round = 0; round < most_rounds; ++round) {
        Eigen::Vector3d steepest = Eigen::Vector3d::Zero();
        double best = round_off;
        for_each_generator(plate, [&](const Eigen::Vector3d& generator) {
            const double gain = generator.dot(remainder);
            if (gain <= best) return;
            best = gain;
            steepest = generator;
        });
        if (best <= round_off || combination.factors.size() == 3) break;
        combination.append(steepest);
        refit(combination, plate.load);
        remainder = plate.load - combination.sum();
    }
    return remainder;
}

/// The furthest a motion of unit length raises an anchor or presses a bed corner.
double resistance_to(const ScaledPlate& plate, const Eigen::Vector3d& motion) {
    double worst = 0.0;
    for_each_generator(plate,
                       [&](const Eigen::Vector3d& generator) { worst = std::max(worst, generator.dot(motion)); });
    return worst;
}

}  // namespace

std::optional<Eigen::Vector3d> unresisted_motion(const ScaledPlate& plate) {
    constexpr double outside = 1e-9;
    constexpr double round_off = 1e-6;
    const Eigen::Vector3d remainder = remainder_outside_cone(plate);
    if (remainder.norm() <= outside) return std::nullopt;
    const Eigen::Vector3d motion = remainder.normalized();
    if (plate.load.dot(motion) <= 0.0 || resistance_to(plate, motion) > round_off) return std::nullopt;
    return motion;
}

}  // namespace toehold::mechanics
