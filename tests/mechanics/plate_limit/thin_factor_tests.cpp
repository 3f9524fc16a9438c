// A matrix factored in its own few places, against the same matrix with all its zeros.
#include "mechanics/plate_limit/thin_factor.h"

#include "support/compare.h"

#include <Eigen/Dense>

#include <array>
#include <random>

using namespace toehold;
using mechanics::ThinFactor;

namespace {

using Group = std::array<int, 6>;

/// Of triangles on a strip that closes in a ring; one freedom of each is held.
std::vector<Group> ring(int elements) {
    std::vector<Group> groups;
    const int size = 3 * elements;
    for (int at = 0; at < elements; ++at) {
        const int first = 3 * at;
        groups.push_back({first, first + 1, first + 2, (first + 3) % size, (first + 4) % size, -1});
    }
    return groups;
}

}  // namespace

TEST_CASE("two unknowns are solved as by hand", "[closed-form]") {
    // 4 x + 2 y = 10, 2 x + 3 y = 9: x = 1.5, y = 2.
    const std::vector<Group> groups{{0, 1, -1, -1, -1, -1}};
    ThinFactor matrix(groups, 2);
    matrix.values()[static_cast<std::size_t>(matrix.place(0, 0))] = 4.0;
    matrix.values()[static_cast<std::size_t>(matrix.place(1, 0))] = 2.0;
    matrix.values()[static_cast<std::size_t>(matrix.place(1, 1))] = 3.0;
    CHECK(matrix.place(0, 1) == matrix.place(1, 0));
    REQUIRE(matrix.factor());
    const Eigen::VectorXd x = matrix.solve(Eigen::Vector2d(10.0, 9.0));
    CHECK_CLOSE(x[0], 1.5, 1e-14, 0.0);
    CHECK_CLOSE(x[1], 2.0, 1e-14, 0.0);
}

TEST_CASE("a thin matrix is solved as a full one is, again and again", "[second-method]") {
    const std::vector<Group> groups = ring(12);
    const int size = 36;
    ThinFactor matrix(groups, size);
    std::mt19937 random(1974);
    std::uniform_real_distribution<double> part(-1.0, 1.0);
    for (int trial = 0; trial < 5; ++trial) {
        Eigen::MatrixXd full = Eigen::MatrixXd::Zero(size, size);
        std::fill(matrix.values().begin(), matrix.values().end(), 0.0);
        for (const Group& group : groups) {
            const Eigen::MatrixXd root = Eigen::MatrixXd::NullaryExpr(6, 6, [&] { return part(random); });
            const Eigen::MatrixXd element = root * root.transpose() + 0.1 * Eigen::MatrixXd::Identity(6, 6);
            for (int i = 0; i < 6; ++i) {
                for (int j = 0; j < 6; ++j) {
                    const int row = group[static_cast<std::size_t>(i)], column = group[static_cast<std::size_t>(j)];
                    if (row < 0 || column < 0) continue;
                    full(row, column) += element(i, j);
                    if (column <= row)
                        matrix.values()[static_cast<std::size_t>(matrix.place(row, column))] += element(i, j);
                }
            }
        }
        const Eigen::VectorXd right = Eigen::VectorXd::NullaryExpr(size, [&] { return part(random); });
        REQUIRE(matrix.factor());
        const Eigen::VectorXd found = matrix.solve(right), slow = full.ldlt().solve(right);
        CHECK((found - slow).norm() <= 1e-10 * slow.norm());
    }
}

TEST_CASE("a matrix that is not positive definite is refused", "[bad-input]") {
    const std::vector<Group> groups{{0, 1, -1, -1, -1, -1}};
    ThinFactor matrix(groups, 2);
    matrix.values()[static_cast<std::size_t>(matrix.place(0, 0))] = 1.0;
    matrix.values()[static_cast<std::size_t>(matrix.place(1, 0))] = 2.0;
    matrix.values()[static_cast<std::size_t>(matrix.place(1, 1))] = 1.0;
    CHECK_FALSE(matrix.factor());
}
