#include "mechanics/flexible_plate/rigid_motion.h"

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>

namespace toehold::mechanics {
namespace {

constexpr double no_resistance = 1e-11;  // of the stiffest motion
constexpr double no_load = 1e-11;        // of the largest
constexpr double weakest_hold = 1e-13;   // of the stiffest motion

/// Tilts made comparable with the lift: by the distance at which the springs resist them.
Eigen::Vector3d scale_of(const Eigen::Matrix3d& stiffness) {
    const double turned = std::max(stiffness(1, 1), stiffness(2, 2));
    const double reach = stiffness(0, 0) > 0.0 && turned > 0.0 ? std::sqrt(turned / stiffness(0, 0)) : 1.0;
    return {1.0, 1.0 / reach, 1.0 / reach};
}

Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> motions_of(const Eigen::Matrix3d& stiffness,
                                                          const Eigen::Vector3d& scale) {
    Eigen::Matrix3d scaled = scale.asDiagonal() * stiffness * scale.asDiagonal();
    scaled = 0.5 * (scaled + scaled.transpose()).eval();
    return Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d>(scaled);
}

}  // namespace

bool hardly_resisted(const Eigen::Matrix3d& stiffness) {
    constexpr double next_to_none = 1e-8;  // of the stiffest motion
    const Eigen::Vector3d scale = scale_of(stiffness);
    const Eigen::LDLT<Eigen::Matrix3d> factor(scale.asDiagonal() * stiffness * scale.asDiagonal());
    const Eigen::Vector3d resistance = factor.vectorD();
    return !(resistance.minCoeff() > next_to_none * resistance.maxCoeff());
}

Eigen::Vector3d rigid_motion(const Eigen::Matrix3d& stiffness, const Eigen::Vector3d& force,
                             const Eigen::Vector3d& from) {
    const Eigen::Vector3d scale = scale_of(stiffness);
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> motions = motions_of(stiffness, scale);
    const Eigen::Vector3d load = motions.eigenvectors().transpose() * scale.cwiseProduct(force);
    const Eigen::Vector3d now = motions.eigenvectors().transpose() * from.cwiseQuotient(scale);
    const double stiffest = motions.eigenvalues()(2), largest = load.cwiseAbs().maxCoeff();
    Eigen::Vector3d moved;
    for (Eigen::Index i = 0; i < 3; ++i) {
        const double resistance = motions.eigenvalues()(i);
        if (stiffest > 0.0 && resistance > no_resistance * stiffest) {
            moved(i) = load(i) / resistance;
        } else if (std::abs(load(i)) <= no_load * largest) {
            moved(i) = now(i);
        } else {
            moved(i) = load(i) / (weakest_hold * (stiffest > 0.0 ? stiffest : 1.0));
        }
    }
    return scale.cwiseProduct(motions.eigenvectors() * moved);
}

}  // namespace toehold::mechanics
