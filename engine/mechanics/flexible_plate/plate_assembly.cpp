#include "mechanics/flexible_plate/plate_assembly.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <stdexcept>

namespace toehold::mechanics {
namespace {

using Triplets = std::vector<Eigen::Triplet<double>>;

void add_element(Triplets& triplets, const TriangleMatrix& stiffness, const std::array<int, 9>& freedoms) {
    for (Eigen::Index row = 0; row < 9; ++row) {
        for (Eigen::Index column = 0; column < 9; ++column) {
            const int r = freedoms[static_cast<std::size_t>(row)], c = freedoms[static_cast<std::size_t>(column)];
            if (c >= 0 && r >= c) triplets.emplace_back(r, c, stiffness(row, column));
        }
    }
}

/// The stiffness of the supports, and its lower factor.
std::pair<Eigen::MatrixXd, Eigen::MatrixXd> stiffness_of(const CompliantSupports& supports) {
    const auto size = static_cast<Eigen::Index>(3 * supports.places.size());
    if (static_cast<Eigen::Index>(supports.stiffness.size()) != size * size) {
        throw std::invalid_argument("the stiffness of compliant supports has three rows and columns for every place");
    }
    const Eigen::Map<const Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>> stiffness(
        supports.stiffness.data(), size, size);
    const bool symmetric =
        (stiffness - stiffness.transpose()).cwiseAbs().maxCoeff() <= 1e-9 * stiffness.cwiseAbs().maxCoeff();
    const Eigen::LLT<Eigen::MatrixXd> factor(stiffness);
    if (!symmetric || factor.info() != Eigen::Success) {
        throw std::invalid_argument("the stiffness of compliant supports is symmetric and positive definite");
    }
    return {stiffness, factor.matrixL()};
}

}  // namespace

PlateAssembly::PlateAssembly(const PlateMesh& mesh, const PlateMaterial& material)
    : mesh_(mesh), freedom_(mesh.nodes.size(), 0), rigidity_(flexural_rigidity(material)) {
    if (mesh_.triangles.empty() || mesh_.ring.size() < 3)
        throw std::invalid_argument("a plate mesh needs triangles and a ring");
    for (const int node : mesh_.ring) freedom_[static_cast<std::size_t>(node)] = -1;
    for (int& first : freedom_) {
        if (first < 0) continue;
        first = freedoms_;
        freedoms_ += 3;
    }
    Triplets triplets;
    triplets.reserve(45 * mesh_.triangles.size());
    for (std::size_t t = 0; t < mesh_.triangles.size(); ++t) {
        std::array<int, 9> freedoms{};
        for (std::size_t corner = 0; corner < 3; ++corner) {
            const int first = freedom(mesh_.triangles[t][corner]);
            for (std::size_t k = 0; k < 3; ++k) freedoms[3 * corner + k] = first < 0 ? -1 : first + static_cast<int>(k);
        }
        add_element(triplets, dkt_stiffness(corners(t), material), freedoms);
    }
    stiffness_.resize(freedoms_, freedoms_);
    stiffness_.setFromTriplets(triplets.begin(), triplets.end());
}

PlateAssembly PlateAssembly::on(const CompliantSupports& supports) const {
    const auto [stiffness, factor] = stiffness_of(supports);
    PlateAssembly given = *this;
    given.places_ = supports.places;
    given.supports_factor_ = factor;
    const int first = freedoms_;
    given.freedoms_ += given.support_freedoms();
    given.stiffness_.conservativeResize(given.freedoms_, given.freedoms_);
    for (Eigen::Index column = 0; column < stiffness.cols(); ++column) {
        for (Eigen::Index row = column; row < stiffness.rows(); ++row)
            given.stiffness_.insert(first + row, first + column) = stiffness(row, column);
    }
    given.stiffness_.makeCompressed();
    return given;
}

std::array<Point, 3> PlateAssembly::corners(std::size_t triangle) const {
    std::array<Point, 3> result;
    for (std::size_t i = 0; i < 3; ++i) result[i] = mesh_.nodes[static_cast<std::size_t>(mesh_.triangles[triangle][i])];
    return result;
}

LiftRow PlateAssembly::row(std::size_t triangle, Point at) const {
    const std::array<Point, 3> p = corners(triangle);
    const TriangleVector values = deflection_row(p, area_coordinates(p, at));
    LiftRow result;
    result.rigid = {1.0, at.y, -at.x};
    for (std::size_t corner = 0; corner < 3; ++corner) {
        const int first = freedom(mesh_.triangles[triangle][corner]);
        if (first < 0) continue;
        for (int k = 0; k < 3; ++k)
            result.elastic.emplace_back(first + k, values(static_cast<Eigen::Index>(3 * corner) + k));
    }
    std::sort(result.elastic.begin(), result.elastic.end());
    return result;
}

LiftRow PlateAssembly::row(Point at) const {
    std::size_t best = 0;
    double best_least = -std::numeric_limits<double>::infinity();
    for (std::size_t t = 0; t < mesh_.triangles.size() && best_least < 0.0; ++t) {
        const std::array<double, 3> l = area_coordinates(corners(t), at);
        const double least = std::min({l[0], l[1], l[2]});
        if (least > best_least) {
            best_least = least;
            best = t;
        }
    }
    return row(best, at);
}

LiftRow PlateAssembly::mean_row(const Footprint& footprint) const {
    LiftRow mean;
    add(mean, row(footprint.center), 0.25);
    const double away = footprint.radius * std::sqrt(2.0 / 3.0);
    for (int i = 0; i < 6; ++i) {
        const double angle = std::numbers::pi * i / 3.0;
        add(mean, row(Point{footprint.center.x + away * std::cos(angle), footprint.center.y + away * std::sin(angle)}),
            0.125);
    }
    return mean;
}

void PlateAssembly::measure_from_support(LiftRow& row, std::size_t support, Point at) const {
    if (support >= places_.size()) return;
    const int first = freedoms_ - support_freedoms() + 3 * static_cast<int>(support);
    const Point place = places_[support];
    row.elastic.emplace_back(first, -1.0);
    row.elastic.emplace_back(first + 1, -(at.y - place.y));
    row.elastic.emplace_back(first + 2, at.x - place.x);
}

double lift_of(const LiftRow& row, const Eigen::Vector3d& rigid, const Eigen::VectorXd& elastic) {
    double lift = row.rigid.dot(rigid);
    for (const auto& [freedom, value] : row.elastic) lift += value * elastic(freedom);
    return lift;
}

void add(LiftRow& a, const LiftRow& b, double weight) {
    a.rigid += weight * b.rigid;
    for (const auto& [freedom, value] : b.elastic) {
        const auto place = std::lower_bound(a.elastic.begin(), a.elastic.end(), freedom,
                                            [](const auto& entry, int wanted) { return entry.first < wanted; });
        if (place != a.elastic.end() && place->first == freedom) {
            place->second += weight * value;
        } else {
            a.elastic.insert(place, {freedom, weight * value});
        }
    }
}

}  // namespace toehold::mechanics
