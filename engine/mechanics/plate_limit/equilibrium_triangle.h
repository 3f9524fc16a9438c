#pragma once
// A triangle of constant moments: Morley's element, read as an equilibrium element. Its freedoms are the lift of its
// corners and the slope across its sides, each positive out of the triangle that runs the side from its lower node to
// its higher one. in, lb.
#include "mechanics/flexible_plate/delaunay.h"
#include "mechanics/plane/geometry.h"

#include <Eigen/Core>

#include <array>

namespace toehold::mechanics {

struct EquilibriumTriangle {
    std::array<int, 6> freedom{};         ///< corners, then the side from each to the next; -1: held
    std::array<Point, 3> corners{};       ///< counter-clockwise
    Eigen::Matrix<double, 3, 6> bending;  ///< curvatures xx, yy and twice xy from the freedoms
    Eigen::Matrix<double, 6, 6> unit;     ///< stiffness for a material of unit stiffness
    double area_in2 = 0.0;
    std::array<LinearField, 3> share;  ///< of a point that belongs to each corner; negative beyond the side across
};

/// Without its freedoms. `nodes`: numbers of its corners.
[[nodiscard]] EquilibriumTriangle equilibrium_triangle(const std::array<Point, 3>& corners, const Triangle& nodes);

/// Moments xx, yy, xy of a material of unit stiffness, whose equivalent is in proportion to the curvature's own.
[[nodiscard]] Eigen::Vector3d unit_moments(const Eigen::Vector3d& curvature);
/// Von Mises' equivalent of a moment.
[[nodiscard]] double equivalent_moment(const Eigen::Vector3d& moments);

/// Of a bent triangle.
struct Curvature {
    double xx = 0.0, yy = 0.0, twice_xy = 0.0;
    /// Von Mises' equivalent of its unit moments: the root of their work.
    [[nodiscard]] double equivalent() const;
};
/// `moved`: every freedom of the plate.
[[nodiscard]] Curvature curvature_of(const EquilibriumTriangle& triangle, const double* moved);
/// From the forces on all freedoms, what the triangle's moments carry at that stiffness.
void take_off(const EquilibriumTriangle& triangle, const Curvature& curvature, double stiffness, double* forces);

/// How much of a point belongs to each corner; negative beyond the side across from it.
[[nodiscard]] std::array<double, 3> area_shares(const EquilibriumTriangle& triangle, Point at);

}  // namespace toehold::mechanics
