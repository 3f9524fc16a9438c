#include "mechanics/plate_limit/moment_field.h"

#include "mechanics/plate_limit/equilibrium_triangle.h"
#include "mechanics/plate_limit/thin_factor.h"
#include "mechanics/plate_limit/triangle_finder.h"

#include <Eigen/Core>
#include <Eigen/OrderingMethods>
#include <Eigen/SparseCore>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>
#include <tuple>
#include <utility>
#include <vector>

namespace toehold::mechanics {
namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr int most_rounds = 30;
/// Of the best field over what the plate's work proves necessary of any: further rounds gain little.
constexpr double close_enough = 1.01;
/// The stiffest triangle over the softest one.
constexpr double stiffness_range = 1e3;

bool in_opening(Point at, std::span<const PlateHole> openings) {
    return std::any_of(openings.begin(), openings.end(), [&](const PlateHole& hole) {
        return distance_to_segment(at, hole.from, hole.to) < hole.radius_in;
    });
}

/// Where a triangle's stiffness goes among the values of the whole: of each pair of its freedoms, -1 for a held one.
using Places = std::array<int, 21>;

/// Calls visit(pair, i, j) for every pair i <= j of a triangle's freedoms.
template <class Visit>
void for_each_pair(Visit&& visit) {
    std::size_t pair = 0;
    for (std::size_t j = 0; j < 6; ++j) {
        for (std::size_t i = 0; i <= j; ++i) visit(pair++, i, j);
    }
}

/// A freedom's place in an order that keeps the factor of the stiffness thin.
std::vector<int> thin_order(const std::vector<EquilibriumTriangle>& triangles, int freedoms) {
    std::vector<Eigen::Triplet<double>> terms;
    terms.reserve(triangles.size() * std::tuple_size_v<Places>);
    for (const EquilibriumTriangle& triangle : triangles) {
        for_each_pair([&](std::size_t, std::size_t i, std::size_t j) {
            const auto [row, column] = std::minmax({triangle.freedom[i], triangle.freedom[j]});
            if (row >= 0) terms.emplace_back(row, column, 1.0);
        });
    }
    Eigen::SparseMatrix<double> pattern(freedoms, freedoms);
    pattern.setFromTriplets(terms.begin(), terms.end());
    Eigen::PermutationMatrix<Eigen::Dynamic, Eigen::Dynamic, int> order;
    Eigen::AMDOrdering<int>()(pattern.selfadjointView<Eigen::Upper>(), order);
    std::vector<int> place(static_cast<std::size_t>(freedoms));
    for (int at = 0; at < freedoms; ++at) place[static_cast<std::size_t>(order.indices()[at])] = at;
    return place;
}

}  // namespace

struct MomentFields::Prepared {
    Polygon foot;
    std::vector<EquilibriumTriangle> triangles;
    int freedoms = 0;
    TriangleFinder finder;
    ThinFactor factor;
    std::vector<Places> places;  ///< one for every triangle

    void number(const std::vector<Triangle>& kept, const std::vector<int>& mesh_ring);
    void reorder();
    void lay_out();
    [[nodiscard]] Eigen::VectorXd forces(std::span<const PointLoad> loads) const;
    void stiffen(const std::vector<double>& of_triangle);
};

namespace {

/// One elastic answer.
struct Trial {
    std::vector<double> bent;  ///< equivalent curvature of each triangle
    double largest_lb = 0.0;   ///< equivalent moment
    double needed_lb = 0.0;    ///< work of the loads over the plate's own at unit plastic moment
    bool balanced = false;     ///< its moments carry the loads
};

Trial trial_of(const std::vector<EquilibriumTriangle>& triangles, const std::vector<double>& stiffness,
               const Eigen::VectorXd& moved, const Eigen::VectorXd& force) {
    constexpr double in_balance = 1e-6;
    Trial trial;
    trial.bent.reserve(triangles.size());
    Eigen::VectorXd left = force;
    double dissipated = 0.0;
    for (std::size_t at = 0; at < triangles.size(); ++at) {
        const EquilibriumTriangle& triangle = triangles[at];
        const Curvature curvature = curvature_of(triangle, moved.data());
        const double bent = curvature.equivalent();
        take_off(triangle, curvature, stiffness[at], left.data());
        trial.bent.push_back(bent);
        trial.largest_lb = std::max(trial.largest_lb, bent * stiffness[at]);
        dissipated += bent * triangle.area_in2;
    }
    trial.needed_lb = dissipated > 0.0 ? force.dot(moved) / dissipated : 0.0;
    trial.balanced = left.norm() <= in_balance * force.norm();
    return trial;
}

/// Softer where it was bent more: in the limit every bent triangle works at the same moment.
void soften(std::vector<double>& stiffness, const std::vector<double>& bent) {
    const double most = *std::max_element(bent.begin(), bent.end());
    for (std::size_t at = 0; at < bent.size(); ++at)
        stiffness[at] = 1.0 / std::max(bent[at] / most, 1.0 / stiffness_range);
}

}  // namespace

void MomentFields::Prepared::number(const std::vector<Triangle>& kept, const std::vector<int>& mesh_ring) {
    const std::set<int> ring(mesh_ring.begin(), mesh_ring.end());
    std::map<int, int> lifts;
    std::map<std::pair<int, int>, int> slopes;
    for (const Triangle& t : kept) {
        for (std::size_t i = 0; i < 3; ++i) {
            if (lifts.try_emplace(t[i], ring.contains(t[i]) ? -1 : freedoms).second && !ring.contains(t[i])) ++freedoms;
            ++slopes[std::minmax(t[i], t[(i + 1) % 3])];
        }
    }
    for (auto& [side, freedom] : slopes) {
        const bool on_foot = freedom == 1 && ring.contains(side.first) && ring.contains(side.second);
        freedom = on_foot ? -1 : freedoms++;
    }
    for (std::size_t at = 0; at < kept.size(); ++at) {
        for (std::size_t i = 0; i < 3; ++i) {
            triangles[at].freedom[i] = lifts.at(kept[at][i]);
            triangles[at].freedom[3 + i] = slopes.at(std::minmax(kept[at][i], kept[at][(i + 1) % 3]));
        }
    }
}

void MomentFields::Prepared::reorder() {
    const std::vector<int> place = thin_order(triangles, freedoms);
    for (EquilibriumTriangle& triangle : triangles) {
        for (int& freedom : triangle.freedom) freedom = freedom >= 0 ? place[static_cast<std::size_t>(freedom)] : -1;
    }
}

void MomentFields::Prepared::lay_out() {
    std::vector<std::array<int, 6>> groups;
    groups.reserve(triangles.size());
    for (const EquilibriumTriangle& triangle : triangles) groups.push_back(triangle.freedom);
    factor = ThinFactor(groups, freedoms);
    places.resize(triangles.size());
    for (std::size_t at = 0; at < triangles.size(); ++at) {
        for_each_pair([&](std::size_t pair, std::size_t i, std::size_t j) {
            const int one = triangles[at].freedom[i], other = triangles[at].freedom[j];
            places[at][pair] = std::min(one, other) >= 0 ? factor.place(one, other) : -1;
        });
    }
}

Eigen::VectorXd MomentFields::Prepared::forces(std::span<const PointLoad> loads) const {
    Eigen::VectorXd force = Eigen::VectorXd::Zero(freedoms);
    for (const PointLoad& load : loads) {
        if (inside_polygon(load.at, foot)) continue;
        const EquilibriumTriangle& triangle = triangles[finder.at(triangles, load.at)];
        std::array<double, 3> share = area_shares(triangle, load.at);
        // A point just off the mesh, where it cuts a curved edge, goes to the nearest side.
        for (double& one : share) one = std::max(0.0, one);
        const double sum = share[0] + share[1] + share[2];
        for (std::size_t i = 0; i < 3; ++i) {
            if (triangle.freedom[i] >= 0) force[triangle.freedom[i]] += load.force_lb * share[i] / sum;
        }
    }
    return force;
}

void MomentFields::Prepared::stiffen(const std::vector<double>& of_triangle) {
    const std::span<double> values = factor.values();
    std::fill(values.begin(), values.end(), 0.0);
    for (std::size_t at = 0; at < triangles.size(); ++at) {
        const double* const unit = triangles[at].unit.data();
        for_each_pair([&, stiffness = of_triangle[at]](std::size_t pair, std::size_t i, std::size_t j) {
            const int place = places[at][pair];
            if (place >= 0) values[static_cast<std::size_t>(place)] += stiffness * unit[6 * j + i];
        });
    }
}

MomentFields::MomentFields(const PlateMesh& mesh, const Polygon& foot, std::span<const PlateHole> openings)
    : prepared_(std::make_unique<Prepared>()) {
    prepared_->foot = foot;
    std::vector<Triangle> kept;
    for (const Triangle& t : mesh.triangles) {
        std::array<Point, 3> corners;
        Point middle;
        for (std::size_t i = 0; i < 3; ++i) {
            corners[i] = mesh.nodes[static_cast<std::size_t>(t[i])];
            middle = {middle.x + corners[i].x / 3.0, middle.y + corners[i].y / 3.0};
        }
        if (inside_polygon(middle, foot) || in_opening(middle, openings)) continue;
        kept.push_back(t);
        prepared_->triangles.push_back(equilibrium_triangle(corners, t));
    }
    prepared_->number(kept, mesh.ring);
    if (prepared_->triangles.empty()) return;
    prepared_->finder = TriangleFinder(prepared_->triangles);
    prepared_->reorder();
    prepared_->lay_out();
}

MomentFields::~MomentFields() = default;
MomentFields::MomentFields(MomentFields&&) noexcept = default;
MomentFields& MomentFields::operator=(MomentFields&&) noexcept = default;

double MomentFields::moment_needed_lb(std::span<const PointLoad> loads, double enough_lb) const {
    Prepared& plate = *prepared_;
    if (plate.triangles.empty()) return infinite;
    const Eigen::VectorXd force = plate.forces(loads);
    if (!(force.norm() > 0.0)) return 0.0;
    std::vector<double> stiffness(plate.triangles.size(), 1.0);
    double best_lb = infinite, necessary_lb = 0.0;
    for (int round = 0; round < most_rounds && best_lb > std::max(enough_lb, close_enough * necessary_lb); ++round) {
        plate.stiffen(stiffness);
        if (!plate.factor.factor()) break;
        const Trial trial = trial_of(plate.triangles, stiffness, plate.factor.solve(force), force);
        // No proof: a part of the plate that openings cut off, or stiffness too far apart.
        if (!trial.balanced) break;
        best_lb = std::min(best_lb, trial.largest_lb);
        necessary_lb = std::max(necessary_lb, trial.needed_lb);
        soften(stiffness, trial.bent);
    }
    return best_lb;
}

}  // namespace toehold::mechanics
