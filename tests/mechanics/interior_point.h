#pragma once
// A convex quadratic program brought to its lowest by Ipopt, a general-purpose interior-point program (A. Waechter, L.
// T. Biegler 2006), which never asks which one-way springs work.
#include <vector>

namespace toehold::test {

struct MatrixEntry {
    int row, column;
    double value;
};

/// Least of x' H x / 2 + c x where A x >= least_row and x >= least_unknown. The solver does best with unknowns of about
/// one size.
struct QuadraticProgram {
    int unknowns = 0, constraints = 0;
    std::vector<MatrixEntry> hessian;  ///< lower half; entries of one place add up
    std::vector<MatrixEntry> rows;     ///< of A; likewise
    std::vector<double> linear, least_row, least_unknown;
};

/// Stands for no bound below.
inline constexpr double no_bound = -1e20;

/// The program's lowest point. `acceptable`: Ipopt's own error at which it may end where round-off lets it go no
/// further. Throws std::runtime_error where it does not end so.
[[nodiscard]] std::vector<double> lowest_by_interior_point(QuadraticProgram program, double acceptable = 1e-11);

}  // namespace toehold::test
