#include "mechanics/space_frame/nonnegative_minimum.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <limits>
#include <vector>

namespace toehold::mechanics::space_frame {
namespace {

// Below these a curvature and a slope are rounding.
constexpr double flat = 1e-11, level = 1e-13;
constexpr int rounds_of_all = 8;

using Unknowns = std::vector<Eigen::Index>;

Eigen::VectorXd part_of(const Eigen::VectorXd& all, const Unknowns& unknowns) {
    Eigen::VectorXd part(static_cast<Eigen::Index>(unknowns.size()));
    for (std::size_t i = 0; i < unknowns.size(); ++i) part(static_cast<Eigen::Index>(i)) = all(unknowns[i]);
    return part;
}

Eigen::MatrixXd part_of(const Eigen::MatrixXd& all, const Unknowns& unknowns) {
    const auto size = static_cast<Eigen::Index>(unknowns.size());
    Eigen::MatrixXd part(size, size);
    for (Eigen::Index i = 0; i < size; ++i) {
        for (Eigen::Index k = 0; k < size; ++k)
            part(i, k) = all(unknowns[static_cast<std::size_t>(i)], unknowns[static_cast<std::size_t>(k)]);
    }
    return part;
}

void put_part(const Eigen::VectorXd& part, const Unknowns& unknowns, Eigen::VectorXd& all) {
    for (std::size_t i = 0; i < unknowns.size(); ++i) all(unknowns[i]) = part(static_cast<Eigen::Index>(i));
}

double rounding_of(const Eigen::VectorXd& b) { return level * b.cwiseAbs().maxCoeff(); }

class ActiveSet {
  public:
    ActiveSet(const Eigen::MatrixXd& matrix, const Eigen::VectorXd& b)
        : matrix_(matrix), b_(b), at_(Eigen::VectorXd::Zero(b.size())) {}

    /// The unknown at 0 along which the quadratic falls most steeply, or below 0.
    [[nodiscard]] Eigen::Index steepest() const {
        const Eigen::VectorXd fall = b_ - matrix_ * at_;
        Eigen::Index best = -1;
        double most = rounding_of(b_);
        for (Eigen::Index i = 0; i < fall.size(); ++i) {
            if (fall(i) <= most || std::find(above_.begin(), above_.end(), i) != above_.end()) continue;
            best = i;
            most = fall(i);
        }
        return best;
    }

    void free(Eigen::Index unknown) { above_.push_back(unknown); }

    /// Goes to the minimum over the unknowns that are free, or to the first of them that reaches 0, which is free no
    /// more. False: nothing stops the way down.
    bool step(bool& arrived) {
        const Eigen::VectorXd now = part_of(at_, above_);
        Eigen::VectorXd way;
        const bool bent = bent_way(now, way);
        double part = bent ? 1.0 : std::numeric_limits<double>::infinity();
        Eigen::Index first = -1;
        for (Eigen::Index i = 0; i < way.size(); ++i) {
            if (way(i) >= 0.0 || now(i) + part * way(i) > 0.0) continue;
            part = now(i) / -way(i);
            first = i;
        }
        arrived = first < 0;
        if (arrived && !bent) return false;
        put_part(now + part * way, above_, at_);
        if (!arrived) {
            at_(above_[static_cast<std::size_t>(first)]) = 0.0;
            above_.erase(above_.begin() + first);
        }
        return true;
    }

    [[nodiscard]] const Eigen::VectorXd& at() const { return at_; }

  private:
    /// To the minimum; or, false, along a direction that the newest free unknown opens and that does not bend up.
    [[nodiscard]] bool bent_way(const Eigen::VectorXd& now, Eigen::VectorXd& way) const {
        const Eigen::MatrixXd all = part_of(matrix_, above_);
        const Eigen::Index others = all.rows() - 1;
        way = Eigen::VectorXd::Ones(all.rows());
        way.head(others) = -all.topLeftCorner(others, others).llt().solve(all.topRightCorner(others, 1)).col(0);
        if (way.dot(all * way) <= flat) return false;
        way = all.llt().solve(part_of(b_, above_)) - now;
        return true;
    }

    const Eigen::MatrixXd& matrix_;
    const Eigen::VectorXd& b_;
    Eigen::VectorXd at_;
    Unknowns above_;  ///< those that may be above 0, the newest last
};

/// Changes every unknown on the wrong side at once; absent where that does not settle soon.
std::optional<NonnegativeMinimum> minimum_by_all(const Eigen::MatrixXd& matrix, const Eigen::VectorXd& b) {
    const double rounding = rounding_of(b);
    NonnegativeMinimum result{Eigen::VectorXd::Zero(b.size()), 0};
    Eigen::VectorXd fall = b;
    for (; result.steps <= rounds_of_all; ++result.steps) {
        Unknowns above;
        bool settled = true;
        for (Eigen::Index i = 0; i < b.size(); ++i) {
            // One above 0 has no slope left.
            const bool was = result.at(i) != 0.0, is = was ? result.at(i) > 0.0 : fall(i) > rounding;
            settled = settled && was == is;
            if (is) above.push_back(i);
        }
        if (settled) return result;
        const Eigen::LLT<Eigen::MatrixXd> factor(part_of(matrix, above));
        if (factor.info() != Eigen::Success || factor.matrixLLT().diagonal().cwiseAbs2().minCoeff() <= flat)
            return std::nullopt;
        result.at.setZero();
        put_part(factor.solve(part_of(b, above)), above, result.at);
        fall = b - matrix * result.at;
    }
    return std::nullopt;
}

}  // namespace

std::optional<NonnegativeMinimum> nonnegative_minimum_by_one(const Eigen::MatrixXd& matrix, const Eigen::VectorXd& b) {
    if (b.size() == 0) return NonnegativeMinimum{b, 0};
    const int most_steps = 20 * static_cast<int>(b.size()) + 20;
    ActiveSet set(matrix, b);
    int steps = 0;
    for (Eigen::Index next = set.steepest(); next >= 0; next = set.steepest()) {
        set.free(next);
        for (bool arrived = false; !arrived; ++steps) {
            if (steps > most_steps || !set.step(arrived)) return std::nullopt;
        }
    }
    return NonnegativeMinimum{set.at(), steps};
}

std::optional<NonnegativeMinimum> nonnegative_minimum(const Eigen::MatrixXd& matrix, const Eigen::VectorXd& b) {
    if (b.size() == 0) return NonnegativeMinimum{b, 0};
    if (auto found = minimum_by_all(matrix, b)) return found;
    return nonnegative_minimum_by_one(matrix, b);
}

}  // namespace toehold::mechanics::space_frame
