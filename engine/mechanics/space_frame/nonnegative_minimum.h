#pragma once
// The least of a convex quadratic where no unknown may be below 0.
#include <Eigen/Core>

#include <optional>

namespace toehold::mechanics::space_frame {

struct NonnegativeMinimum {
    Eigen::VectorXd at;
    int steps = 0;  ///< changes of the set of unknowns above 0
};

/// Of x' M x / 2 - b' x, x >= 0. `matrix` symmetric, no direction below 0, of size about 1. Absent: the quadratic falls
/// without end, or the steps do not end by rounding.
///
/// First a few rounds in which every unknown on the wrong side changes it, which mostly meet the answer but need not
/// end; then the active-set method of C. L. Lawson and R. J. Hanson, Solving Least Squares Problems, 1974, chapter 23
/// (from memory), which does: each set's minimum is below the one before, so that no set comes twice.
[[nodiscard]] std::optional<NonnegativeMinimum> nonnegative_minimum(const Eigen::MatrixXd& matrix,
                                                                    const Eigen::VectorXd& b);

/// The second method alone.
[[nodiscard]] std::optional<NonnegativeMinimum> nonnegative_minimum_by_one(const Eigen::MatrixXd& matrix,
                                                                           const Eigen::VectorXd& b);

}  // namespace toehold::mechanics::space_frame
