#pragma once
// What of a load no sum of one-sided forces can balance: the load less its nearest point in the cone of those forces,
// by the non-negative least squares of C. L. Lawson and R. J. Hanson, Solving Least Squares Problems, 1974, chapter 23.
// Each round brings the remainder down, so it ends; the limit guards round-off.
#include <Eigen/QR>

namespace toehold::mechanics {

struct ConeSearch {
    int most_rounds = 0;
    double round_off = 0.0;  ///< an edge that gains less than this of the remainder is no help
};

/// Some edges of the cone and their factors, none below 0.
template <int size>
class ConeSum {
  public:
    using Vector = Eigen::Matrix<double, size, 1>;

    [[nodiscard]] Vector sum() const {
        return factors_.size() == 0 ? Vector(Vector::Zero()) : Vector(edges_ * factors_);
    }
    [[nodiscard]] bool full() const { return factors_.size() == size; }

    void append(const Vector& edge) {
        edges_.conservativeResize(size, edges_.cols() + 1);
        edges_.col(edges_.cols() - 1) = edge;
        factors_.conservativeResize(factors_.size() + 1);
        factors_(factors_.size() - 1) = 0.0;
    }

    /// Moves the factors to the best fit, dropping on the way each edge whose factor would fall below 0.
    void refit(const Vector& load) {
        while (factors_.size() > 0) {
            const Factors best = edges_.colPivHouseholderQr().solve(load);
            Eigen::Index first = -1;
            double step = 1.0;
            for (Eigen::Index index = 0; index < best.size(); ++index) {
                if (best(index) > 0.0) continue;
                const double factor = factors_(index);
                const double share = factor > 0.0 ? factor / (factor - best(index)) : 0.0;
                if (first >= 0 && share >= step) continue;
                step = share;
                first = index;
            }
            if (first < 0) {
                factors_ = best;
                return;
            }
            factors_ += step * (best - factors_);
            remove(first);
        }
    }

  private:
    using Factors = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, size, 1>;

    void remove(Eigen::Index index) {
        const Eigen::Index last = factors_.size() - 1;
        edges_.col(index) = Vector(edges_.col(last));
        factors_(index) = factors_(last);
        edges_.conservativeResize(size, last);
        factors_.conservativeResize(last);
    }

    Eigen::Matrix<double, size, Eigen::Dynamic, 0, size, size> edges_{size, 0};
    Factors factors_{0};
};

/// `for_each_edge(visit)` calls visit(edge) for every edge of the cone, each time in the same order.
template <int size, typename ForEachEdge>
[[nodiscard]] Eigen::Matrix<double, size, 1> remainder_outside_cone(const Eigen::Matrix<double, size, 1>& load,
                                                                    const ForEachEdge& for_each_edge,
                                                                    const ConeSearch& search) {
    using Vector = Eigen::Matrix<double, size, 1>;
    ConeSum<size> sum;
    Vector remainder = load;
    for (int round = 0; round < search.most_rounds; ++round) {
        Vector steepest = Vector::Zero();
        double best = search.round_off;
        for_each_edge([&](const Vector& edge) {
            const double gain = edge.dot(remainder);
            if (gain <= best) return;
            best = gain;
            steepest = edge;
        });
        if (best <= search.round_off || sum.full()) break;
        sum.append(steepest);
        sum.refit(load);
        remainder = load - sum.sum();
    }
    return remainder;
}

}  // namespace toehold::mechanics
