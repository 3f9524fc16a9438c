#include "mechanics/plate_limit/moment_field.h"

#include "mechanics/plate_limit/equilibrium_triangle.h"

#include <Eigen/Dense>
#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>
#include <utility>
#include <vector>

namespace toehold::mechanics {
namespace {

using Vector6 = Eigen::Matrix<double, 6, 1>;

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

Vector6 gather(const std::array<int, 6>& freedom, const Eigen::VectorXd& values) {
    Vector6 result;
    for (int i = 0; i < 6; ++i) {
        const int at = freedom[static_cast<std::size_t>(i)];
        result[i] = at >= 0 ? values[at] : 0.0;
    }
    return result;
}

}  // namespace

struct MomentFields::Prepared {
    Polygon foot;
    std::vector<EquilibriumTriangle> triangles;
    int freedoms = 0;

    void number(const std::vector<Triangle>& kept, const std::vector<int>& mesh_ring);
    [[nodiscard]] const EquilibriumTriangle& triangle_at(Point at) const;
    [[nodiscard]] Eigen::VectorXd forces(std::span<const PointLoad> loads) const;
    [[nodiscard]] Eigen::SparseMatrix<double> stiffness(const std::vector<double>& of_triangle) const;
};

namespace {

/// One elastic answer.
struct Trial {
    std::vector<double> bent;  ///< equivalent curvature of each triangle
    double largest_lb = 0.0;   ///< equivalent moment
    double needed_lb = 0.0;    ///< work of the loads over the plate's own at unit plastic moment
};

Trial trial_of(const std::vector<EquilibriumTriangle>& triangles, const std::vector<double>& stiffness,
               const Eigen::VectorXd& moved, double work) {
    Trial trial;
    double dissipated = 0.0;
    for (std::size_t at = 0; at < triangles.size(); ++at) {
        const EquilibriumTriangle& triangle = triangles[at];
        const double bent = equivalent_moment(unit_moments(triangle.bending * gather(triangle.freedom, moved)));
        trial.bent.push_back(bent);
        trial.largest_lb = std::max(trial.largest_lb, bent * stiffness[at]);
        dissipated += bent * triangle.area_in2;
    }
    trial.needed_lb = dissipated > 0.0 ? work / dissipated : 0.0;
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

const EquilibriumTriangle& MomentFields::Prepared::triangle_at(Point at) const {
    const auto inside = [at](const EquilibriumTriangle& triangle) {
        const std::array<double, 3> share = area_shares(triangle.corners, at);
        return std::min({share[0], share[1], share[2]});
    };
    return *std::max_element(triangles.begin(), triangles.end(),
                             [&](const auto& a, const auto& b) { return inside(a) < inside(b); });
}

Eigen::VectorXd MomentFields::Prepared::forces(std::span<const PointLoad> loads) const {
    Eigen::VectorXd force = Eigen::VectorXd::Zero(freedoms);
    for (const PointLoad& load : loads) {
        if (inside_polygon(load.at, foot)) continue;
        const EquilibriumTriangle& triangle = triangle_at(load.at);
        std::array<double, 3> share = area_shares(triangle.corners, load.at);
        // A point just off the mesh, where it cuts a curved edge, goes to the nearest side.
        for (double& one : share) one = std::max(0.0, one);
        const double sum = share[0] + share[1] + share[2];
        for (std::size_t i = 0; i < 3; ++i) {
            if (triangle.freedom[i] >= 0) force[triangle.freedom[i]] += load.force_lb * share[i] / sum;
        }
    }
    return force;
}

Eigen::SparseMatrix<double> MomentFields::Prepared::stiffness(const std::vector<double>& of_triangle) const {
    std::vector<Eigen::Triplet<double>> terms;
    terms.reserve(triangles.size() * 36);
    for (std::size_t at = 0; at < triangles.size(); ++at) {
        const EquilibriumTriangle& triangle = triangles[at];
        for (int i = 0; i < 6; ++i) {
            const int row = triangle.freedom[static_cast<std::size_t>(i)];
            for (int j = 0; j < 6 && row >= 0; ++j) {
                const int column = triangle.freedom[static_cast<std::size_t>(j)];
                if (column >= 0) terms.emplace_back(row, column, of_triangle[at] * triangle.unit(i, j));
            }
        }
    }
    Eigen::SparseMatrix<double> whole(freedoms, freedoms);
    whole.setFromTriplets(terms.begin(), terms.end());
    return whole;
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
}

MomentFields::~MomentFields() = default;
MomentFields::MomentFields(MomentFields&&) noexcept = default;
MomentFields& MomentFields::operator=(MomentFields&&) noexcept = default;

double MomentFields::moment_needed_lb(std::span<const PointLoad> loads, double enough_lb) const {
    if (prepared_->triangles.empty()) return infinite;
    const Eigen::VectorXd force = prepared_->forces(loads);
    if (!(force.norm() > 0.0)) return 0.0;
    std::vector<double> stiffness(prepared_->triangles.size(), 1.0);
    Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>> solver;
    double best_lb = infinite, necessary_lb = 0.0;
    for (int round = 0; round < most_rounds && best_lb > std::max(enough_lb, close_enough * necessary_lb); ++round) {
        const Eigen::SparseMatrix<double> whole = prepared_->stiffness(stiffness);
        if (round == 0) solver.analyzePattern(whole);
        solver.factorize(whole);
        const Eigen::VectorXd moved = solver.solve(force);
        // Not in balance, no proof: a part of the plate that openings cut off, or stiffness too far apart.
        constexpr double balanced = 1e-6;
        if (!((whole * moved - force).norm() <= balanced * force.norm())) break;
        const Trial trial = trial_of(prepared_->triangles, stiffness, moved, force.dot(moved));
        best_lb = std::min(best_lb, trial.largest_lb);
        necessary_lb = std::max(necessary_lb, trial.needed_lb);
        soften(stiffness, trial.bent);
    }
    return best_lb;
}

}  // namespace toehold::mechanics
