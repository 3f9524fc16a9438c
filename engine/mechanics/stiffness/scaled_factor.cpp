#include "mechanics/stiffness/scaled_factor.h"

#include <utility>

namespace toehold::mechanics {

/// A free motion shows as a pivot near 0.
std::optional<ScaledFactor> factored(const Eigen::SparseMatrix<double>& stiffness) {
    constexpr double free_motion = 1e-11;
    const Eigen::VectorXd diagonal = stiffness.diagonal();
    if (diagonal.size() == 0 || (diagonal.array() <= 0.0).any()) return std::nullopt;
    ScaledFactor factor{diagonal.cwiseSqrt().cwiseInverse(), nullptr};
    const Eigen::SparseMatrix<double> scaled = factor.scale.asDiagonal() * stiffness * factor.scale.asDiagonal();
    auto solver = std::make_shared<Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>>>(scaled);
    if (solver->info() != Eigen::Success || solver->vectorD().minCoeff() < free_motion) return std::nullopt;
    factor.scaled = std::move(solver);
    return factor;
}

}  // namespace toehold::mechanics
