#include "mechanics/space_frame/nonnegative_minimum.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <limits>
#include <vector>

namespace toehold::mechanics::space_frame {
namespace {

// Below these a curvature and a slope are rounding.
constexpr double flat = 1e-11, level = 1e-13;

class ActiveSet {
  public:
    ActiveSet(const Eigen::MatrixXd& matrix, const Eigen::VectorXd& b)
        : matrix_(matrix), b_(b), at_(Eigen::VectorXd::Zero(b.size())) {}

    /// The unknown at 0 along which the quadratic falls most steeply, or below 0.
    [[nodiscard]] Eigen::Index steepest() const {
        const Eigen::VectorXd fall = b_ - matrix_ * at_;
        Eigen::Index best = -1;
        double most = level * b_.cwiseAbs().maxCoeff();
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
        const Eigen::VectorXd now = at_(above_);
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
        at_(above_) = now + part * way;
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
        const Eigen::MatrixXd all = matrix_(above_, above_);
        const Eigen::Index others = all.rows() - 1;
        way = Eigen::VectorXd::Ones(all.rows());
        way.head(others) = -all.topLeftCorner(others, others).llt().solve(all.topRightCorner(others, 1)).col(0);
        if (way.dot(all * way) <= flat) return false;
        way = all.llt().solve(b_(above_)) - now;
        return true;
    }

    const Eigen::MatrixXd& matrix_;
    const Eigen::VectorXd& b_;
    Eigen::VectorXd at_;
    std::vector<Eigen::Index> above_;  ///< those that may be above 0, the newest last
};

}  // namespace

std::optional<NonnegativeMinimum> nonnegative_minimum(const Eigen::MatrixXd& matrix, const Eigen::VectorXd& b) {
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

}  // namespace toehold::mechanics::space_frame
