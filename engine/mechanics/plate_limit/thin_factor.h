#pragma once
// A symmetric positive definite matrix that is factored again and again, each time with other values in the same few
// places: where each product of a column goes is found once, so that a factoring is nothing but the products.
#include <Eigen/Core>

#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace toehold::mechanics {

class ThinFactor {
  public:
    ThinFactor() = default;
    /// `groups`: of unknowns that meet each other, as those of one element do; -1 is none. `size` of all unknowns. The
    /// fill depends on their order.
    ThinFactor(std::span<const std::array<int, 6>> groups, int size);

    /// Where the value of a pair of unknowns that meet stands among `values`.
    [[nodiscard]] int place(int one, int other) const;
    /// All of the matrix's values, to be filled in before each factoring, which puts its own in their stead.
    [[nodiscard]] std::span<double> values() { return values_; }
    /// False where the matrix is not positive definite; then nothing can be solved.
    [[nodiscard]] bool factor();
    [[nodiscard]] Eigen::VectorXd solve(Eigen::VectorXd right) const;

  private:
    void find_targets();
    [[nodiscard]] std::size_t begin_of(std::size_t column) const { return starts_[column]; }
    [[nodiscard]] std::size_t end_of(std::size_t column) const { return starts_[column + 1]; }

    std::size_t size_ = 0;
    std::vector<double> values_;       ///< the diagonal, then below it column by column
    std::vector<std::size_t> starts_;  ///< of each column below the diagonal, from the diagonal's end
    std::vector<int> rows_;
    std::vector<int> targets_;  ///< of each product of two values of a column, in the order of factoring
};

}  // namespace toehold::mechanics
