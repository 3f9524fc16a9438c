// The group action factor held against a joint solved as what it is: two bars with E A, joined by a spring at every
// fastener, pulled apart at their far ends. Nodes, springs and a Gaussian elimination; nothing of Eq. 11.3-1.
#include "resistance/wood/connection_factors.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

using namespace toehold;
using resistance::FastenerRow;

namespace {

using Matrix = std::vector<std::vector<double>>;

std::vector<double> solve(Matrix matrix, std::vector<double> right) {
    const std::size_t size = right.size();
    for (std::size_t column = 0; column < size; ++column) {
        std::size_t pivot = column;
        for (std::size_t row = column + 1; row < size; ++row) {
            if (std::abs(matrix[row][column]) > std::abs(matrix[pivot][column])) pivot = row;
        }
        std::swap(matrix[column], matrix[pivot]);
        std::swap(right[column], right[pivot]);
        for (std::size_t row = column + 1; row < size; ++row) {
            const double factor = matrix[row][column] / matrix[column][column];
            for (std::size_t at = column; at < size; ++at) matrix[row][at] -= factor * matrix[column][at];
            right[row] -= factor * right[column];
        }
    }
    for (std::size_t row = size; row-- > 0;) {
        for (std::size_t at = row + 1; at < size; ++at) right[row] -= matrix[row][at] * right[at];
        right[row] /= matrix[row][row];
    }
    return right;
}

void add_spring(Matrix& matrix, std::size_t one, std::size_t other, double stiffness) {
    matrix[one][one] += stiffness;
    matrix[other][other] += stiffness;
    matrix[one][other] -= stiffness;
    matrix[other][one] -= stiffness;
}

/// What each fastener carries of 1 lb. Main member: nodes 0 to n - 1, held at its first; side member: n to 2 n - 1,
/// pulled at its last.
std::vector<double> shares(const FastenerRow& row) {
    const auto n = static_cast<std::size_t>(row.count);
    Matrix matrix(2 * n, std::vector<double>(2 * n, 0.0));
    for (std::size_t at = 0; at < n; ++at) {
        add_spring(matrix, at, n + at, row.slip_modulus_lb_per_in);
        if (at + 1 == n) continue;
        add_spring(matrix, at, at + 1, row.main_axial_stiffness_lb / row.spacing_in);
        add_spring(matrix, n + at, n + at + 1, row.side_axial_stiffness_lb / row.spacing_in);
    }
    constexpr double held = 1e9;  // beside springs of about 1e5: the held end moves by 1e-9 in
    matrix[0][0] += held;
    std::vector<double> pull(2 * n, 0.0);
    pull.back() = 1.0;
    const std::vector<double> moved = solve(std::move(matrix), std::move(pull));
    std::vector<double> carried;
    for (std::size_t at = 0; at < n; ++at) carried.push_back(row.slip_modulus_lb_per_in * (moved[n + at] - moved[at]));
    return carried;
}

/// The joint has reached its capacity when the fastener that carries most has: n fasteners are worth 1/max of one.
double by_springs(const FastenerRow& row) {
    const std::vector<double> carried = shares(row);
    return 1.0 / (static_cast<double>(row.count) * *std::max_element(carried.begin(), carried.end()));
}

}  // namespace

TEST_CASE("fasteners as springs between two bars carry what the group action factor says", "[oracle]") {
    const double wood_slip = resistance::wood_to_wood_slip_modulus_lb_per_in(0.5);
    const double metal_slip = resistance::wood_to_metal_slip_modulus_lb_per_in(0.5);
    struct Joint {
        const char* what;
        double main_lb, side_lb, slip;
    };
    // E A: 4x8 and 2x8 of 1.6e6 psi, 1/4 x 3 in of steel, 6x12 of 1.3e6 psi.
    for (const Joint& joint : {Joint{"4x8 between 2x8 pieces", 1.6e6 * 25.375, 1.6e6 * 2.0 * 10.875, wood_slip},
                               Joint{"2x8 on 4x8", 1.6e6 * 25.375, 1.6e6 * 10.875, wood_slip},
                               Joint{"steel on 4x8", 1.6e6 * 25.375, 29e6 * 0.75, metal_slip},
                               Joint{"steel on 6x12", 1.3e6 * 63.25, 29e6 * 0.75, metal_slip}}) {
        for (const int count : {2, 3, 5, 8, 12}) {
            for (const double spacing_in : {2.0, 4.0}) {
                const FastenerRow row{count, spacing_in, 0.5, joint.slip, joint.main_lb, joint.side_lb};
                INFO(joint.what << ", " << count << " at " << spacing_in);
                CHECK_CLOSE(resistance::group_factor(row), by_springs(row), 1e-6, 0.0);
            }
        }
    }
}

TEST_CASE("the stiffer bar's end loads its fastener most, whichever bar is called main", "[oracle]") {
    const FastenerRow row{6, 4.0, 0.75, 150000.0, 40e6, 12e6};
    const FastenerRow turned{6, 4.0, 0.75, 150000.0, 12e6, 40e6};
    CHECK_CLOSE(by_springs(row), by_springs(turned), 1e-6, 0.0);
    CHECK_CLOSE(resistance::group_factor(turned), by_springs(row), 1e-6, 0.0);
    CHECK(by_springs(row) < 1.0);
}
