#include "mechanics/flexible_plate/grid.h"

#include <Eigen/SparseCholesky>

namespace toehold::test {
namespace {

using mechanics::Point;
using mechanics::Triangle;
using Triplets = std::vector<Eigen::Triplet<double>>;

}  // namespace

std::array<Point, 3> PlateGrid::corners(const Triangle& triangle) const {
    const auto at = [&](std::size_t i) { return nodes[static_cast<std::size_t>(triangle[i])]; };
    return {at(0), at(1), at(2)};
}

PlateGrid rectangle_grid(double x_min, double x_max, double y_min, double y_max, int columns, int rows) {
    PlateGrid grid;
    for (int j = 0; j <= rows; ++j) {
        for (int i = 0; i <= columns; ++i)
            grid.nodes.push_back({x_min + (x_max - x_min) * i / columns, y_min + (y_max - y_min) * j / rows});
    }
    for (int j = 0; j < rows; ++j) {
        for (int i = 0; i < columns; ++i) {
            const int a = j * (columns + 1) + i, b = a + 1, c = b + columns + 1, d = a + columns + 1;
            grid.triangles.push_back({a, b, c});
            grid.triangles.push_back({a, c, d});
        }
    }
    return grid;
}

AssembledPlate::AssembledPlate(const PlateGrid& grid, const mechanics::PlateMaterial& material) : grid_(grid) {
    const auto freedoms = static_cast<Eigen::Index>(3 * grid.nodes.size());
    Triplets triplets;
    for (const Triangle& t : grid.triangles) {
        const mechanics::TriangleMatrix element = mechanics::dkt_stiffness(grid.corners(t), material);
        for (int r = 0; r < 9; ++r) {
            for (int c = 0; c < 9; ++c) {
                triplets.emplace_back(3 * t[static_cast<std::size_t>(r / 3)] + r % 3,
                                      3 * t[static_cast<std::size_t>(c / 3)] + c % 3, element(r, c));
            }
        }
    }
    stiffness_.resize(freedoms, freedoms);
    stiffness_.setFromTriplets(triplets.begin(), triplets.end());
    force_ = prescribed_ = Eigen::VectorXd::Zero(freedoms);
    fixed_.assign(static_cast<std::size_t>(freedoms), 0);
}

void AssembledPlate::prescribe(int freedom, double value) {
    fixed_[static_cast<std::size_t>(freedom)] = 1;
    prescribed_(freedom) = value;
}

void AssembledPlate::load_evenly(double pressure) {
    for (const Triangle& t : grid_.triangles) {
        const std::array<Point, 3> corners = grid_.corners(t);
        const double share = pressure * mechanics::area(corners) / 3.0;
        for (const std::array<double, 3>& middle :
             {std::array{0.0, 0.5, 0.5}, std::array{0.5, 0.0, 0.5}, std::array{0.5, 0.5, 0.0}}) {
            const mechanics::TriangleVector row = mechanics::deflection_row(corners, middle);
            for (int i = 0; i < 9; ++i) force_(3 * t[static_cast<std::size_t>(i / 3)] + i % 3) += share * row(i);
        }
    }
}

Eigen::VectorXd AssembledPlate::solve() const {
    std::vector<int> place(fixed_.size(), -1);
    int count = 0;
    for (std::size_t i = 0; i < fixed_.size(); ++i) {
        if (!fixed_[i]) place[i] = count++;
    }
    const Eigen::VectorXd left = force_ - stiffness_ * prescribed_;
    Eigen::VectorXd force(count);
    Triplets triplets;
    for (int column = 0; column < stiffness_.outerSize(); ++column) {
        const int to = place[static_cast<std::size_t>(column)];
        if (to < 0) continue;
        force(to) = left(column);
        for (Eigen::SparseMatrix<double>::InnerIterator entry(stiffness_, column); entry; ++entry) {
            const int from = place[static_cast<std::size_t>(entry.row())];
            if (from >= 0) triplets.emplace_back(from, to, entry.value());
        }
    }
    Eigen::SparseMatrix<double> free(count, count);
    free.setFromTriplets(triplets.begin(), triplets.end());
    const Eigen::VectorXd found = Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>>(free).solve(force);
    Eigen::VectorXd all = prescribed_;
    for (std::size_t i = 0; i < fixed_.size(); ++i) {
        if (place[i] >= 0) all(static_cast<Eigen::Index>(i)) = found(place[i]);
    }
    return all;
}

}  // namespace toehold::test
