#pragma once
// The factor of a stiffness whose unknowns are moves and turns, inches and radians: scaled by its diagonal so that they
// compare.
#include <Eigen/Core>
#include <Eigen/SparseCholesky>

#include <memory>
#include <optional>

namespace toehold::mechanics {

struct ScaledFactor {
    Eigen::VectorXd scale;
    std::shared_ptr<const Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>>> scaled;

    /// Each column a load on the unknowns, and the motion under it; a vector or a matrix.
    template <class Loads>
    [[nodiscard]] Loads solve(const Loads& loads) const {
        const Loads comparable = scale.asDiagonal() * loads;
        return scale.asDiagonal() * scaled->solve(comparable).eval();
    }
};

/// Of a symmetric stiffness, its lower half at the least. Absent: some motion meets no resistance.
[[nodiscard]] std::optional<ScaledFactor> factored(const Eigen::SparseMatrix<double>& stiffness);

}  // namespace toehold::mechanics
