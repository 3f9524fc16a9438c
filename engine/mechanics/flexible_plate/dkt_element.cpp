#include "mechanics/flexible_plate/dkt_element.h"

namespace toehold::mechanics {
namespace {

/// The paper's side coefficients a to e; side k runs between the two corners that are not k.
struct Side {
    double a, b, c, d, e;
};

Side side_between(Point i, Point j) {
    const double x = i.x - j.x, y = i.y - j.y;
    const double length_squared = x * x + y * y;
    return {-x / length_squared, 0.75 * x * y / length_squared, (0.25 * x * x - 0.5 * y * y) / length_squared,
            -y / length_squared, (0.25 * y * y - 0.5 * x * x) / length_squared};
}

/// One derivative of the six quadratic shape functions: corners 0..2, then the middles of the sides opposite to them.
using ShapeDerivatives = std::array<double, 6>;

struct Gradients {
    ShapeDerivatives x, y;
};

Gradients shape_gradients(const std::array<Point, 3>& p, const std::array<double, 3>& l) {
    const double twice_area = 2.0 * area(p);
    Gradients result{};
    std::array<double, 3> lx{}, ly{};
    for (std::size_t i = 0; i < 3; ++i) {
        const std::size_t j = (i + 1) % 3, k = (i + 2) % 3;
        lx[i] = (p[j].y - p[k].y) / twice_area;
        ly[i] = (p[k].x - p[j].x) / twice_area;
    }
    for (std::size_t i = 0; i < 3; ++i) {
        const std::size_t j = (i + 1) % 3, k = (i + 2) % 3;
        result.x[i] = (4.0 * l[i] - 1.0) * lx[i];
        result.y[i] = (4.0 * l[i] - 1.0) * ly[i];
        result.x[3 + i] = 4.0 * (lx[j] * l[k] + l[j] * lx[k]);
        result.y[3 + i] = 4.0 * (ly[j] * l[k] + l[j] * ly[k]);
    }
    return result;
}

/// Rows of the paper's Hx and Hy for one corner, over its own freedoms (w, w,y, -w,x), from shape derivatives `n`.
struct CornerRows {
    std::array<double, 3> x, y;
};

CornerRows corner_rows(const std::array<Side, 3>& sides, const ShapeDerivatives& n, std::size_t corner) {
    const std::size_t before = (corner + 1) % 3;  // the side that ends in this corner, opposite to the next one
    const std::size_t after = (corner + 2) % 3;   // the side that starts in this corner
    const Side& s = sides[after];
    const Side& r = sides[before];
    const double ns = n[3 + after], nr = n[3 + before], nc = n[corner];
    CornerRows rows{};
    rows.x = {1.5 * (s.a * ns - r.a * nr), s.b * ns + r.b * nr, nc - s.c * ns - r.c * nr};
    rows.y = {1.5 * (s.d * ns - r.d * nr), -nc + s.e * ns + r.e * nr, -rows.x[1]};
    return rows;
}

}  // namespace

double flexural_rigidity(const PlateMaterial& m) {
    return m.modulus * m.thickness * m.thickness * m.thickness / (12.0 * (1.0 - m.poisson * m.poisson));
}

Eigen::Matrix3d bending_matrix(const PlateMaterial& material) {
    Eigen::Matrix3d matrix;
    const double nu = material.poisson;
    matrix << 1.0, nu, 0.0, nu, 1.0, 0.0, 0.0, 0.0, 0.5 * (1.0 - nu);
    return flexural_rigidity(material) * matrix;
}

CurvatureMatrix dkt_curvature(const std::array<Point, 3>& p, const std::array<double, 3>& l) {
    const std::array<Side, 3> sides = {side_between(p[1], p[2]), side_between(p[2], p[0]), side_between(p[0], p[1])};
    const Gradients n = shape_gradients(p, l);
    CurvatureMatrix b;
    for (std::size_t corner = 0; corner < 3; ++corner) {
        const CornerRows by_x = corner_rows(sides, n.x, corner);
        const CornerRows by_y = corner_rows(sides, n.y, corner);
        for (std::size_t freedom = 0; freedom < 3; ++freedom) {
            // The paper's rotations are beta = -grad w and its freedoms (w, w,y, -w,x); ours are (w, w,x, w,y).
            const auto column = static_cast<Eigen::Index>(3 * corner + (freedom == 0 ? 0 : 3 - freedom));
            const double sign = freedom == 2 ? 1.0 : -1.0;
            b(0, column) = sign * by_x.x[freedom];
            b(1, column) = sign * by_y.y[freedom];
            b(2, column) = sign * (by_y.x[freedom] + by_x.y[freedom]);
        }
    }
    return b;
}

TriangleMatrix dkt_stiffness(const std::array<Point, 3>& corners, const PlateMaterial& material) {
    const Eigen::Matrix3d bending = bending_matrix(material);
    const double weight = area(corners) / 3.0;
    constexpr std::array<std::array<double, 3>, 3> middles = {{{0.0, 0.5, 0.5}, {0.5, 0.0, 0.5}, {0.5, 0.5, 0.0}}};
    TriangleMatrix stiffness = TriangleMatrix::Zero();
    for (const auto& middle : middles) {
        const CurvatureMatrix b = dkt_curvature(corners, middle);
        stiffness.noalias() += weight * b.transpose() * bending * b;
    }
    return stiffness;
}

TriangleVector deflection_row(const std::array<Point, 3>& p, const std::array<double, 3>& l) {
    TriangleVector row;
    const double bubble = 0.5 * l[0] * l[1] * l[2];
    for (std::size_t i = 0; i < 3; ++i) {
        const std::size_t j = (i + 1) % 3, k = (i + 2) % 3;
        const auto at = static_cast<Eigen::Index>(3 * i);
        const double to_j = l[i] * l[i] * l[j] + bubble, to_k = l[i] * l[i] * l[k] + bubble;
        row(at) = l[i] + l[i] * l[i] * (l[j] + l[k]) - l[i] * (l[j] * l[j] + l[k] * l[k]);
        row(at + 1) = (p[j].x - p[i].x) * to_j + (p[k].x - p[i].x) * to_k;
        row(at + 2) = (p[j].y - p[i].y) * to_j + (p[k].y - p[i].y) * to_k;
    }
    return row;
}

double area(const std::array<Point, 3>& p) {
    return 0.5 * ((p[1].x - p[0].x) * (p[2].y - p[0].y) - (p[1].y - p[0].y) * (p[2].x - p[0].x));
}

std::array<double, 3> area_coordinates(const std::array<Point, 3>& p, Point at) {
    const double whole = area(p);
    const double first = area({at, p[1], p[2]}) / whole;
    const double second = area({p[0], at, p[2]}) / whole;
    return {first, second, 1.0 - first - second};
}

}  // namespace toehold::mechanics
