// The plate element against what defines it: constant curvature must pass through any patch of triangles unharmed, a
// rigid motion must cost nothing, and rotations must obey Kirchhoff at the corners and the middles of the sides
// (J.-L. Batoz, K.-J. Bathe, L.-W. Ho 1980). The patch test: B. M. Irons, A. Razzaque 1972.
#include "mechanics/flexible_plate/dkt_element.h"

#include "mechanics/flexible_plate/grid.h"
#include "support/compare.h"

#include <Eigen/Eigenvalues>

#include <random>

using namespace toehold::mechanics;
using toehold::test::AssembledPlate;
using toehold::test::PlateGrid;

namespace {

using Corners = std::array<Point, 3>;
using Area = std::array<double, 3>;

constexpr PlateMaterial steel{29e6, 0.3, 0.375};
constexpr std::array<Corners, 4> shapes = {{{{{0.0, 0.0}, {1.0, 0.0}, {0.0, 1.0}}},
                                            {{{-0.3, 0.2}, {1.7, -0.4}, {0.9, 1.1}}},
                                            {{{10.0, -7.0}, {10.2, -7.1}, {10.4, -6.2}}},
                                            {{{0.0, 0.0}, {4.0, 0.1}, {2.5, 0.6}}}}};
constexpr std::array<Area, 5> places = {
    {{1.0 / 3.0, 1.0 / 3.0, 1.0 / 3.0}, {0.6, 0.3, 0.1}, {0.0, 0.25, 0.75}, {1.0, 0.0, 0.0}, {0.05, 0.9, 0.05}}};

/// c[0] + c[1] x + c[2] y + c[3] x^2 + c[4] x y + c[5] y^2.
struct Quadratic {
    std::array<double, 6> c{};
    [[nodiscard]] double at(Point p) const {
        return c[0] + c[1] * p.x + c[2] * p.y + c[3] * p.x * p.x + c[4] * p.x * p.y + c[5] * p.y * p.y;
    }
    [[nodiscard]] Eigen::Vector3d freedoms(Point p) const {
        return {at(p), c[1] + 2.0 * c[3] * p.x + c[4] * p.y, c[2] + c[4] * p.x + 2.0 * c[5] * p.y};
    }
    [[nodiscard]] Eigen::Vector3d curvature() const { return {2.0 * c[3], 2.0 * c[5], 2.0 * c[4]}; }
};

const std::vector<Quadratic> bendings{{{0.3, -0.2, 0.1, 0.5, 0.0, 0.0}},
                                      {{0.0, 0.4, 0.2, 0.0, 0.0, -0.7}},
                                      {{-1.0, 0.0, 0.6, 0.0, 0.9, 0.0}},
                                      {{0.1, 0.2, 0.3, 0.4, -0.5, 0.6}}};

Point place(const Corners& p, const Area& l) {
    return {l[0] * p[0].x + l[1] * p[1].x + l[2] * p[2].x, l[0] * p[0].y + l[1] * p[1].y + l[2] * p[2].y};
}

TriangleVector nodal(const Corners& corners, const Quadratic& w) {
    TriangleVector values;
    for (std::size_t i = 0; i < 3; ++i) values.segment<3>(static_cast<Eigen::Index>(3 * i)) = w.freedoms(corners[i]);
    return values;
}

/// Eight triangles about two inner nodes, none like another.
PlateGrid distorted_patch() {
    PlateGrid patch;
    patch.nodes = {{0.0, 0.0}, {2.1, -0.2}, {2.4, 1.6}, {0.9, 1.9}, {-0.2, 1.3}, {0.55, 0.85}, {1.5, 0.5}, {1.1, -0.3}};
    patch.triangles = {{0, 7, 5}, {7, 6, 5}, {7, 1, 6}, {1, 2, 6}, {2, 3, 6}, {3, 5, 6}, {3, 4, 5}, {4, 0, 5}};
    return patch;
}

/// Rotations (w,x, w,y) of the discrete Kirchhoff triangle, worked from its definition alone: at the corners the
/// slopes; at a side's middle, across it their mean, along it the slope of the cubic through the side's ends.
Eigen::Vector2d defined_slope(const Corners& p, const TriangleVector& u, const Area& l) {
    Eigen::Vector2d slope = Eigen::Vector2d::Zero();
    for (std::size_t i = 0; i < 3; ++i) {
        const std::size_t j = (i + 1) % 3;
        const auto a = static_cast<Eigen::Index>(3 * i), b = static_cast<Eigen::Index>(3 * j);
        const Eigen::Vector2d from = u.segment<2>(a + 1), to = u.segment<2>(b + 1);
        const Eigen::Vector2d side(p[j].x - p[i].x, p[j].y - p[i].y);
        const double length = side.norm();
        const Eigen::Vector2d along = side / length, across(-along.y(), along.x());
        const double middle_along = 1.5 * (u(b) - u(a)) / length - 0.25 * along.dot(from + to);
        const Eigen::Vector2d middle = middle_along * along + 0.5 * across.dot(from + to) * across;
        slope += l[i] * (2.0 * l[i] - 1.0) * from + 4.0 * l[i] * l[j] * middle;
    }
    return slope;
}

}  // namespace

TEST_CASE("A distorted patch of triangles passes constant curvature on exactly", "[closed-form]") {
    const PlateGrid patch = distorted_patch();
    for (const Quadratic& w : bendings) {
        AssembledPlate plate(patch, steel);
        for (int node = 0; node < static_cast<int>(patch.nodes.size()); ++node) {
            const Eigen::Vector3d values = w.freedoms(patch.nodes[static_cast<std::size_t>(node)]);
            const bool inner = node == 5 || node == 6;
            for (int k = 0; k < 3 && !inner; ++k) plate.prescribe(3 * node + k, values(k));
        }
        const Eigen::VectorXd solution = plate.solve();
        for (const Triangle& t : patch.triangles) {
            TriangleVector u;
            for (std::size_t i = 0; i < 3; ++i)
                u.segment<3>(static_cast<Eigen::Index>(3 * i)) =
                    solution.segment<3>(3 * static_cast<Eigen::Index>(t[i]));
            for (const Area& l : places) {
                const Eigen::Vector3d curvature = dkt_curvature(patch.corners(t), l) * u;
                for (Eigen::Index k = 0; k < 3; ++k) CHECK_CLOSE(curvature(k), w.curvature()(k), 0.0, 1e-12);
            }
        }
        for (const int node : {5, 6}) {
            const Eigen::Vector3d expected = w.freedoms(patch.nodes[static_cast<std::size_t>(node)]);
            for (int k = 0; k < 3; ++k) CHECK_CLOSE(solution(3 * node + k), expected(k), 0.0, 1e-12);
        }
    }
}

TEST_CASE("The element's energy for a constant curvature is the plate's own", "[closed-form]") {
    // U = D/2 ((w,xx + w,yy)^2 - 2 (1 - nu) (w,xx w,yy - w,xy^2)) area (Timoshenko and Woinowsky-Krieger, strain energy
    // in bending of plates).
    const double rigidity = 29e6 * 0.375 * 0.375 * 0.375 / (12.0 * 0.91);
    CHECK_CLOSE(flexural_rigidity(steel), rigidity, 1e-14, 0.0);
    for (const Corners& corners : shapes) {
        for (const Quadratic& w : bendings) {
            const Eigen::Vector3d k = w.curvature();
            const double twist = 0.5 * k(2);
            const double density =
                0.5 * rigidity * ((k(0) + k(1)) * (k(0) + k(1)) - 2.0 * 0.7 * (k(0) * k(1) - twist * twist));
            const TriangleVector u = nodal(corners, w);
            // The third shape lies far from the origin, where a rigid tilt costs digits.
            CHECK_CLOSE(0.5 * u.dot(dkt_stiffness(corners, steel) * u), density * area(corners), 1e-8, 0.0);
        }
    }
}

TEST_CASE("Only the three rigid motions cost an element nothing", "[closed-form]") {
    for (const Corners& corners : shapes) {
        const TriangleMatrix stiffness = dkt_stiffness(corners, steel);
        CHECK((stiffness - stiffness.transpose()).norm() <= 1e-14 * stiffness.norm());
        for (const Quadratic& w : {Quadratic{{1.0}}, Quadratic{{0.0, 1.0}}, Quadratic{{0.0, 0.0, 1.0}}}) {
            const TriangleVector u = nodal(corners, w);
            CHECK((stiffness * u).norm() <= 1e-12 * stiffness.norm() * u.norm());
        }
        // Freedoms of one dimension (slope times size), so that eigenvalues compare.
        const double size = std::sqrt(area(corners));
        TriangleVector scale;
        for (Eigen::Index i = 0; i < 9; ++i) scale(i) = i % 3 == 0 ? 1.0 : 1.0 / size;
        const TriangleMatrix even = scale.asDiagonal() * stiffness * scale.asDiagonal();
        const Eigen::SelfAdjointEigenSolver<TriangleMatrix> modes(even);
        const double largest = modes.eigenvalues()(8);
        for (Eigen::Index i = 0; i < 3; ++i) CHECK_CLOSE(modes.eigenvalues()(i), 0.0, 0.0, 1e-12 * largest);
        CHECK(modes.eigenvalues()(3) > 1e-5 * largest);
    }
}

TEST_CASE("Curvature is that of slopes that obey Kirchhoff at corners and mid-sides", "[closed-form]") {
    std::mt19937 random(1980);
    for (const Corners& corners : shapes) {
        TriangleVector u;
        for (Eigen::Index i = 0; i < 9; ++i) u(i) = static_cast<double>(random()) / 4294967296.0 - 0.5;
        const double step = 0.05 * std::sqrt(area(corners));
        for (const Area& l : places) {
            const Point at = place(corners, l);
            const auto slope = [&](double x, double y) {
                return defined_slope(corners, u, area_coordinates(corners, {at.x + x, at.y + y}));
            };
            // Slopes are quadratic, so central differences of any step are exact.
            const Eigen::Vector2d by_x = (slope(step, 0.0) - slope(-step, 0.0)) / (2.0 * step);
            const Eigen::Vector2d by_y = (slope(0.0, step) - slope(0.0, -step)) / (2.0 * step);
            const Eigen::Vector3d curvature = dkt_curvature(corners, l) * u;
            const double scale = curvature.cwiseAbs().maxCoeff();
            CHECK_CLOSE(curvature(0), by_x(0), 0.0, 1e-11 * scale);
            CHECK_CLOSE(curvature(1), by_y(1), 0.0, 1e-11 * scale);
            CHECK_CLOSE(curvature(2), by_x(1) + by_y(0), 0.0, 1e-11 * scale);
        }
    }
}

TEST_CASE("The deflection row is exact for every quadratic", "[closed-form]") {
    for (const Corners& corners : shapes) {
        for (const Quadratic& w : bendings) {
            for (const Area& l : places) {
                CHECK_CLOSE(deflection_row(corners, l).dot(nodal(corners, w)), w.at(place(corners, l)), 1e-12, 1e-12);
            }
        }
    }
}

TEST_CASE("Along a side the deflection row is the cubic of the side's ends", "[closed-form]") {
    // Hermite's cubic: w and the slope along the side at both ends; so neighbours meet without a gap.
    const Corners& p = shapes[1];
    const std::array<double, 9> values = {0.3, -1.0, 0.4, 0.7, 0.2, -0.9, -0.5, 0.8, 0.1};
    const TriangleVector u = Eigen::Map<const TriangleVector>(values.data());
    for (std::size_t i = 0; i < 3; ++i) {
        const std::size_t j = (i + 1) % 3;
        const auto a = static_cast<Eigen::Index>(3 * i), b = static_cast<Eigen::Index>(3 * j);
        const Eigen::Vector2d side(p[j].x - p[i].x, p[j].y - p[i].y);
        for (const double s : {0.0, 0.2, 0.5, 0.9, 1.0}) {
            Area l{};
            l[i] = 1.0 - s;
            l[j] = s;
            const double cubic = u(a) * (1.0 - 3.0 * s * s + 2.0 * s * s * s) + u(b) * (3.0 * s * s - 2.0 * s * s * s) +
                                 side.dot(u.segment<2>(a + 1)) * s * (1.0 - s) * (1.0 - s) -
                                 side.dot(u.segment<2>(b + 1)) * s * s * (1.0 - s);
            CHECK_CLOSE(deflection_row(p, l).dot(u), cubic, 1e-13, 1e-13);
        }
    }
}

TEST_CASE("Area coordinates sum to one, give back their point and leave the triangle with it", "[closed-form]") {
    for (const Corners& corners : shapes) {
        for (const Area& l : places) {
            const Area found = area_coordinates(corners, place(corners, l));
            CHECK_CLOSE(found[0] + found[1] + found[2], 1.0, 1e-14, 0.0);
            for (std::size_t i = 0; i < 3; ++i) CHECK_CLOSE(found[i], l[i], 0.0, 1e-11);
        }
        const Area outside = area_coordinates(corners, place(corners, {1.5, -0.25, -0.25}));
        CHECK(outside[0] > 1.0);
        CHECK(outside[1] < 0.0);
    }
}
