#include "mechanics/plate_limit/equilibrium_triangle.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::mechanics {
namespace {

double twice_area(Point a, Point b, Point c) { return (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y); }

Eigen::Matrix3d unit_material() {
    Eigen::Matrix3d material;
    material << 1.0, 0.5, 0.0, 0.5, 1.0, 0.0, 0.0, 0.0, 0.25;
    return material * (4.0 / 3.0);
}

/// The constant curvature is the integral round the sides of the slope times the normal, over the area.
Eigen::Matrix<double, 3, 6> bending_of(const std::array<Point, 3>& corner, const Triangle& nodes, double area_in2) {
    Eigen::Matrix<double, 3, 6> result = Eigen::Matrix<double, 3, 6>::Zero();
    for (int i = 0; i < 3; ++i) {
        const int j = (i + 1) % 3;
        const auto a = static_cast<std::size_t>(i), b = static_cast<std::size_t>(j);
        const double length = std::hypot(corner[b].x - corner[a].x, corner[b].y - corner[a].y);
        const double sx = (corner[b].x - corner[a].x) / length, sy = (corner[b].y - corner[a].y) / length;
        const double nx = sy, ny = -sx;
        const double out = (nodes[a] < nodes[b] ? length : -length) / area_in2;
        result.col(3 + i) += out * Eigen::Vector3d(nx * nx, ny * ny, 2.0 * nx * ny);
        const Eigen::Vector3d along = Eigen::Vector3d(sx * nx, sy * ny, sx * ny + sy * nx) / area_in2;
        result.col(i) -= along;
        result.col(j) += along;
    }
    return result;
}

std::array<LinearField, 3> shares_of(const std::array<Point, 3>& corner) {
    const double whole = twice_area(corner[0], corner[1], corner[2]);
    std::array<LinearField, 3> shares;
    for (std::size_t i = 0; i < 3; ++i) {
        const Point a = corner[(i + 1) % 3], b = corner[(i + 2) % 3];
        shares[i] = {(a.x * b.y - b.x * a.y) / whole, (a.y - b.y) / whole, (b.x - a.x) / whole};
    }
    return shares;
}

}  // namespace

EquilibriumTriangle equilibrium_triangle(const std::array<Point, 3>& corners, const Triangle& nodes) {
    EquilibriumTriangle triangle;
    triangle.corners = corners;
    triangle.area_in2 = 0.5 * twice_area(corners[0], corners[1], corners[2]);
    triangle.bending = bending_of(corners, nodes, triangle.area_in2);
    triangle.unit = triangle.area_in2 * triangle.bending.transpose() * unit_material() * triangle.bending;
    triangle.share = shares_of(corners);
    return triangle;
}

Eigen::Vector3d unit_moments(const Eigen::Vector3d& curvature) { return unit_material() * curvature; }

double equivalent_moment(const Eigen::Vector3d& m) {
    return std::sqrt(std::max(0.0, m[0] * m[0] + m[1] * m[1] - m[0] * m[1] + 3.0 * m[2] * m[2]));
}

// With the unit material's moments 4/3 (a + b/2, a/2 + b, c/4) of curvatures a, b and twice xy c.
double Curvature::equivalent() const {
    return std::sqrt(std::max(0.0, (4.0 * (xx * xx + xx * yy + yy * yy) + twice_xy * twice_xy) / 3.0));
}

Curvature curvature_of(const EquilibriumTriangle& triangle, const double* moved) {
    const double* bending = triangle.bending.data();
    Curvature curvature;
    for (std::size_t i = 0; i < 6; ++i, bending += 3) {
        const int at = triangle.freedom[i];
        if (at < 0) continue;
        curvature.xx += bending[0] * moved[at];
        curvature.yy += bending[1] * moved[at];
        curvature.twice_xy += bending[2] * moved[at];
    }
    return curvature;
}

void take_off(const EquilibriumTriangle& triangle, const Curvature& curvature, double stiffness, double* forces) {
    const double factor = 4.0 / 3.0 * stiffness * triangle.area_in2;
    const double xx = factor * (curvature.xx + 0.5 * curvature.yy), yy = factor * (curvature.yy + 0.5 * curvature.xx);
    const double xy = 0.25 * factor * curvature.twice_xy;
    const double* bending = triangle.bending.data();
    for (std::size_t i = 0; i < 6; ++i, bending += 3) {
        const int at = triangle.freedom[i];
        if (at >= 0) forces[at] -= bending[0] * xx + bending[1] * yy + bending[2] * xy;
    }
}

std::array<double, 3> area_shares(const EquilibriumTriangle& triangle, Point at) {
    return {triangle.share[0].at(at), triangle.share[1].at(at), triangle.share[2].at(at)};
}

}  // namespace toehold::mechanics
