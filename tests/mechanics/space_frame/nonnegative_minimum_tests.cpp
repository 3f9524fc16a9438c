// The least of a convex quadratic over unknowns that may not be below 0.
#include "mechanics/space_frame/nonnegative_minimum.h"

#include "support/compare.h"
#include "support/random/number.h"

namespace {

using toehold::mechanics::space_frame::nonnegative_minimum;
using toehold::mechanics::space_frame::nonnegative_minimum_by_one;
using toehold::test::number;

Eigen::MatrixXd random_matrix(Eigen::Index rows, Eigen::Index columns) {
    Eigen::MatrixXd result(rows, columns);
    for (Eigen::Index i = 0; i < rows; ++i) {
        for (Eigen::Index k = 0; k < columns; ++k) result(i, k) = number(-1.0, 1.0);
    }
    return result;
}

}  // namespace

TEST_CASE("at the minimum no unknown falls and none below 0 is used, by both methods alike", "[property]") {
    REQUIRE(rc::check("conditions", [] {
        const Eigen::Index size = *rc::gen::inRange(1, 9);
        const Eigen::MatrixXd root = random_matrix(size, size);
        const Eigen::MatrixXd matrix =
            (root * root.transpose() + 0.05 * Eigen::MatrixXd::Identity(size, size)) / static_cast<double>(size);
        const Eigen::VectorXd b = random_matrix(size, 1);
        const auto found = nonnegative_minimum(matrix, b), slowly = nonnegative_minimum_by_one(matrix, b);
        RC_ASSERT(found.has_value());
        RC_ASSERT(slowly.has_value());
        const Eigen::VectorXd rise = matrix * found->at - b;
        for (Eigen::Index i = 0; i < size; ++i) {
            RC_ASSERT(found->at(i) >= 0.0);
            RC_ASSERT(rise(i) >= -1e-9);
            RC_ASSERT(found->at(i) * rise(i) <= 1e-9);
        }
        RC_ASSERT((found->at - slowly->at).norm() <= 1e-7 * (1.0 + found->at.norm()));
    }));
}

TEST_CASE("a quadratic that falls without end along its flat direction has no minimum, else it has one",
          "[closed-form]") {
    Eigen::MatrixXd matrix(2, 2);
    matrix << 1.0, -1.0, -1.0, 1.0;
    // Along (1, 1) it is flat: b decides.
    CHECK_FALSE(nonnegative_minimum(matrix, Eigen::Vector2d(0.5, 0.5)).has_value());
    const auto held = nonnegative_minimum(matrix, Eigen::Vector2d(1.0, -2.0));
    REQUIRE(held.has_value());
    CHECK_CLOSE(held->at(0), 1.0, 1e-12, 0.0);
    CHECK(held->at(1) == 0.0);
    // Flat along (1, -1), which the bounds close.
    matrix << 1.0, 1.0, 1.0, 1.0;
    const auto closed = nonnegative_minimum(matrix, Eigen::Vector2d(1.0, 1.5));
    REQUIRE(closed.has_value());
    CHECK_CLOSE(closed->at(0), 0.0, 0.0, 1e-12);
    CHECK_CLOSE(closed->at(1), 1.5, 1e-12, 0.0);
    CHECK(nonnegative_minimum(Eigen::MatrixXd(0, 0), Eigen::VectorXd(0)).has_value());
}
