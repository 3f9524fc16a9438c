#include "mechanics/side_post/load_cone.h"

#include <Eigen/QR>

#include <algorithm>
#include <cmath>
#include <vector>

namespace toehold::mechanics::side_post {
namespace {

/// What a unit of pull, slip or pressure asks of the load: the edges of the cone, each of length 1.
std::vector<Vector6> cone_edges(const PostModel& model) {
    std::vector<Vector6> edges;
    const auto add = [&edges](const Vector6& edge) { edges.push_back(edge.normalized()); };
    const auto rigid_part = [](const PointRow& row) { return Vector6(row.factor.head<6>()); };
    for (std::size_t i = 0; i < model.fastener_rows().size(); ++i) {
        const PostFastener& fastener = model.post().fasteners[i];
        const FastenerRows& rows = model.fastener_rows()[i];
        if (fastener.tension_lb_per_in > 0.0) add(rigid_part(rows.opening));
        if (fastener.slip_x_lb_per_in > 0.0) {
            add(rigid_part(rows.slip_x));
            add(-rigid_part(rows.slip_x));
        }
        if (fastener.slip_z_lb_per_in > 0.0) {
            add(rigid_part(rows.slip_z));
            add(-rigid_part(rows.slip_z));
        }
    }
    for (const PostBearing& bearing : model.post().bearings) {
        const double sign = bearing.side == PostSide::face ? -1.0 : 1.0;
        for (const double x : {bearing.x_min_in, bearing.x_max_in}) {
            for (const double z : {bearing.z_min_in, bearing.z_max_in}) {
                Vector6 edge = carried_row(1, {x, 0.0, z - model.reference_in()});
                edge.tail<3>() /= model.length_in();
                add(sign * edge);
            }
        }
    }
    return edges;
}

/// Some of the edges and their factors, none below 0.
struct Sum {
    std::vector<Vector6> edges;
    Eigen::VectorXd factors{0};

    [[nodiscard]] Eigen::MatrixXd matrix() const {
        Eigen::MatrixXd columns(rigid_freedoms, static_cast<Eigen::Index>(edges.size()));
        for (std::size_t i = 0; i < edges.size(); ++i) columns.col(static_cast<Eigen::Index>(i)) = edges[i];
        return columns;
    }
    void append(const Vector6& edge) {
        edges.push_back(edge);
        factors.conservativeResize(factors.size() + 1);
        factors(factors.size() - 1) = 0.0;
    }
    void remove(Eigen::Index index) {
        const Eigen::Index last = factors.size() - 1;
        edges[static_cast<std::size_t>(index)] = edges.back();
        edges.pop_back();
        factors(index) = factors(last);
        factors.conservativeResize(last);
    }
};

/// Moves the factors to the best fit, dropping on the way each edge whose factor would fall below 0.
void refit(Sum& sum, const Vector6& load) {
    while (!sum.edges.empty()) {
        const Eigen::VectorXd best = sum.matrix().colPivHouseholderQr().solve(load);
        Eigen::Index first = -1;
        double step = 1.0;
        for (Eigen::Index i = 0; i < best.size(); ++i) {
            if (best(i) > 0.0) continue;
            const double share = sum.factors(i) > 0.0 ? sum.factors(i) / (sum.factors(i) - best(i)) : 0.0;
            if (first >= 0 && share >= step) continue;
            step = share;
            first = i;
        }
        if (first < 0) {
            sum.factors = best;
            return;
        }
        sum.factors += step * (best - sum.factors);
        sum.remove(first);
    }
}

/// The load less its nearest point in the cone: the non-negative least squares of C. L. Lawson and R. J. Hanson,
/// Solving Least Squares Problems, 1974, chapter 23 (from memory), as of the rigid plate.
Vector6 remainder_outside(const std::vector<Vector6>& edges, const Vector6& load) {
    constexpr int most_rounds = 500;
    constexpr double round_off = 1e-13;
    Sum sum;
    Vector6 remainder = load;
    for (int round = 0; round < most_rounds; ++round) {
        const auto gain = [&remainder](const Vector6& edge) { return edge.dot(remainder); };
        const auto steepest = std::max_element(edges.begin(), edges.end(),
                                               [&](const Vector6& a, const Vector6& b) { return gain(a) < gain(b); });
        if (steepest == edges.end() || gain(*steepest) <= round_off || sum.edges.size() == rigid_freedoms) break;
        sum.append(*steepest);
        refit(sum, load);
        remainder = load;
        if (!sum.edges.empty()) remainder -= sum.matrix() * sum.factors;
    }
    return remainder;
}

}  // namespace

std::optional<Vector6> unresisted_motion(const PostModel& model) {
    constexpr double outside = 1e-9, resisted = 1e-6;
    const Vector6 whole = model.load().head<rigid_freedoms>();
    const double size = whole.cwiseAbs().maxCoeff();
    if (size <= 0.0) return std::nullopt;
    const std::vector<Vector6> edges = cone_edges(model);
    const Vector6 load = whole / size, remainder = remainder_outside(edges, load);
    if (remainder.norm() <= outside) return std::nullopt;
    const Vector6 motion = remainder / remainder.cwiseAbs().maxCoeff();
    const bool held =
        std::any_of(edges.begin(), edges.end(), [&](const Vector6& edge) { return edge.dot(motion) > resisted; });
    if (held || load.dot(motion) <= 0.0) return std::nullopt;
    return motion;
}

}  // namespace toehold::mechanics::side_post
