// Lower bounds on plates against closed forms, against yield lines from above, and against themselves on finer meshes.
#include "mechanics/plate_limit/equilibrium_triangle.h"
#include "mechanics/plate_limit/moment_field.h"
#include "mechanics/shapes.h"
#include "mechanics/yield_line/yield_line.h"
#include "support/compare.h"

#include <cmath>
#include <numbers>

namespace {

using namespace toehold;
using mechanics::Footprint;
using mechanics::MomentFields;
using mechanics::Point;
using mechanics::PointLoad;
using mechanics::Polygon;

mechanics::Polygon centered(double width, double depth) {
    return test::rectangle(-0.5 * width, 0.5 * width, -0.5 * depth, 0.5 * depth);
}

Polygon circle(double diameter) {
    Polygon corners;
    for (int i = 0; i < 72; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / 72;
        corners.push_back({0.5 * diameter * std::cos(angle), 0.5 * diameter * std::sin(angle)});
    }
    return corners;
}

/// One pound on the rim of each footprint, in eight parts.
std::vector<PointLoad> pulls(const std::vector<Footprint>& prints) {
    std::vector<PointLoad> loads;
    for (const Footprint& print : prints) {
        for (int i = 0; i < 8; ++i) {
            const double angle = 2.0 * std::numbers::pi * (i + 0.5) / 8;
            loads.push_back(
                {{print.center.x + print.radius * std::cos(angle), print.center.y + print.radius * std::sin(angle)},
                 0.125});
        }
    }
    return loads;
}

double needed(const Polygon& outline, const Polygon& foot, const std::vector<Footprint>& prints, double fineness,
              const std::vector<mechanics::PlateHole>& openings = {}) {
    return MomentFields(mechanics::mesh_plate(outline, foot, prints, fineness), foot, openings)
        .moment_needed_lb(pulls(prints));
}

}  // namespace

TEST_CASE("A triangle's curvatures are those of any quadratic surface", "[closed-form]") {
    // w = x^2 + 3 x y - 2 y^2: curvatures 2, -4 and twice 3. Slopes at the middles of the sides, out of each side run
    // from its lower node.
    const std::array<Point, 3> corners{{{0.2, -0.1}, {2.3, 0.4}, {0.9, 1.7}}};
    const mechanics::Triangle nodes{7, 2, 5};
    const mechanics::EquilibriumTriangle triangle = mechanics::equilibrium_triangle(corners, nodes);
    Eigen::Matrix<double, 6, 1> freedoms;
    for (int i = 0; i < 3; ++i) {
        const auto a = static_cast<std::size_t>(i), b = static_cast<std::size_t>((i + 1) % 3);
        const Point p = corners[a], q = corners[b], m{0.5 * (p.x + q.x), 0.5 * (p.y + q.y)};
        freedoms[i] = p.x * p.x + 3.0 * p.x * p.y - 2.0 * p.y * p.y;
        const double length = std::hypot(q.x - p.x, q.y - p.y), sign = nodes[a] < nodes[b] ? 1.0 : -1.0;
        freedoms[3 + i] =
            sign * ((2.0 * m.x + 3.0 * m.y) * (q.y - p.y) - (3.0 * m.x - 4.0 * m.y) * (q.x - p.x)) / length;
    }
    const Eigen::Vector3d curvature = triangle.bending * freedoms;
    CHECK_CLOSE(curvature[0], 2.0, 1e-12, 0.0);
    CHECK_CLOSE(curvature[1], -4.0, 1e-12, 0.0);
    CHECK_CLOSE(curvature[2], 6.0, 1e-12, 0.0);
    // Von Mises by hand: m = (3, -1, 2): 9 + 1 + 3 + 12 = 25.
    CHECK_CLOSE(mechanics::equivalent_moment({3.0, -1.0, 2.0}), 5.0, 1e-12, 0.0);
}

TEST_CASE("A strip held at one end needs its moment over its width", "[closed-form]") {
    // 1.5 in wide, the post 0.5 in deep across all of it but a hair, 1 lb at each corner of the far end, 4 in off: 8 lb
    // in over 1.5 in = 5.33 lb. Von Mises' plate may use up to 2/sqrt(3) of it where the post keeps it from curling.
    const Polygon outline = {{-0.75, -0.5}, {0.75, -0.5}, {0.75, 4.25}, {-0.75, 4.25}};
    const Polygon foot = {{-0.7, -0.25}, {0.7, -0.25}, {0.7, 0.25}, {-0.7, 0.25}};
    const MomentFields fields(mechanics::mesh_plate(outline, foot, {}, 2.0), foot, {});
    const double most = fields.moment_needed_lb(std::vector<PointLoad>{{{-0.7, 4.25}, 1.0}, {{0.7, 4.25}, 1.0}});
    CHECK(most < 1.06 * 8.0 / 1.5);
    CHECK(most > 0.5 * std::numbers::sqrt3 * 8.0 / 1.5);
}

TEST_CASE("A field needs no less than yield lines do in von Mises' metal, and not much more", "[closed-form]") {
    // 8 x 8 with a 2 in post, anchors 2.75 in off both axes. One corner: the line across it at the post's corner is 2
    // (5.6569 - 1.4142) = 8.485 in long and 2.475 in from the anchor: 0.2917 lb for a pound. Both of a side: 2 x 1.75/8
    // = 0.4375. In von Mises' metal a straight line takes 2/sqrt(3) of that.
    const Polygon outline = centered(8.0, 8.0), foot = centered(2.0, 2.0);
    const double mises = 0.5 * std::numbers::sqrt3;
    const double one = needed(outline, foot, {{{2.75, 2.75}, 0.5}}, 1.0);
    CHECK(one > mises * 0.2917);
    CHECK(one < 1.10 * 0.2917);
    const double both = needed(outline, foot, {{{2.75, 2.75}, 0.5}, {{2.75, -2.75}, 0.5}}, 1.0);
    CHECK(both > mises * 0.4375);
    CHECK(both < 1.10 * 0.4375);
}

TEST_CASE("A round flange carries what its chord does", "[closed-form]") {
    // 4 in round, 1.5 in tube, an anchor at 1.375 in: chord at the tube 2 sqrt(4 - 0.5625) = 3.708 in, arm 0.625:
    // 0.1685 lb for a pound.
    const double most = needed(circle(4.0), circle(1.5), {{{0.0, 1.375}, 0.375}}, 1.0);
    CHECK(most > 0.5 * std::numbers::sqrt3 * 0.1685);
    CHECK(most < 1.10 * 0.1685);
}

TEST_CASE("A finer mesh finds better fields", "[convergence]") {
    // Twice as fine each time: 2250 lb (1/2 in of A36) over what is needed: 6,800, 7,440 and 7,680 lb on one corner.
    const Polygon outline = centered(8.0, 8.0), foot = centered(2.0, 2.0);
    const std::vector<Footprint> corner{{{2.75, 2.75}, 0.5}};
    const double coarse = needed(outline, foot, corner, 0.5), common = needed(outline, foot, corner, 1.0),
                 fine = needed(outline, foot, corner, 2.0);
    CHECK(coarse > common);
    CHECK(common > fine);
    CHECK(common < 1.06 * fine);
}

TEST_CASE("Twice the load needs twice the moment, and a turned plate the same within the mesh's error", "[property]") {
    const Polygon foot = centered(2.0, 3.0);
    const std::vector<Footprint> print{{{3.0, 2.0}, 0.5}};
    const MomentFields fields(mechanics::mesh_plate(centered(8.0, 6.0), foot, print, 1.0), foot, {});
    std::vector<PointLoad> loads = pulls(print);
    const double once = fields.moment_needed_lb(loads);
    for (PointLoad& load : loads) load.force_lb *= 2.0;
    CHECK_CLOSE(fields.moment_needed_lb(loads), 2.0 * once, 1e-9, 0.0);
    const double turned = needed(centered(6.0, 8.0), centered(3.0, 2.0), {{{-2.0, 3.0}, 0.5}}, 1.0);
    CHECK_CLOSE(turned, once, 0.04, 0.0);
    CHECK(fields.moment_needed_lb({}) == 0.0);
}

TEST_CASE("An opening leaves less, and one that cuts a part off leaves no field", "[unit]") {
    const Polygon outline = centered(8.0, 8.0), foot = centered(2.0, 2.0);
    const std::vector<Footprint> print{{{3.0, 0.0}, 0.4}};
    const double whole = needed(outline, foot, print, 1.0);
    const double slotted = needed(outline, foot, print, 1.0, {{{1.8, -2.5}, {1.8, 2.5}, 0.3}});
    CHECK(slotted > 1.3 * whole);
    CHECK(std::isinf(needed(outline, foot, print, 1.0, {{{1.8, -5.0}, {1.8, 5.0}, 0.6}})));
}

TEST_CASE("A search that may end early ends no higher than it may, and else where the whole search ends",
          "[property]") {
    const Polygon outline = centered(8.0, 8.0), foot = centered(2.0, 2.0);
    const std::vector<Footprint> prints{{{2.75, 2.75}, 0.5}, {{2.75, -2.75}, 0.5}};
    const MomentFields fields(mechanics::mesh_plate(outline, foot, prints, 1.0), foot, {});
    const std::vector<PointLoad> loads = pulls(prints);
    const double whole = fields.moment_needed_lb(loads);
    CHECK(fields.moment_needed_lb(loads, 0.99 * whole) == whole);
    const double early = fields.moment_needed_lb(loads, 1.3 * whole);
    CHECK(early <= 1.3 * whole);
    CHECK(early >= whole);
}

TEST_CASE("The equivalent of a curvature is the root of its work", "[closed-form]") {
    const std::array<Point, 3> corners{{{0.2, -0.1}, {2.3, 0.4}, {0.9, 1.7}}};
    mechanics::EquilibriumTriangle triangle = mechanics::equilibrium_triangle(corners, {7, 2, 5});
    triangle.freedom = {0, 1, 2, 3, -1, 5};
    const std::array<double, 6> moved{0.3, -0.7, 0.2, 0.4, 9.0, -0.5};
    Eigen::Matrix<double, 6, 1> freedoms;
    for (int i = 0; i < 6; ++i) freedoms[i] = i == 4 ? 0.0 : moved[static_cast<std::size_t>(i)];
    const mechanics::Curvature curvature = mechanics::curvature_of(triangle, moved.data());
    const double equivalent = curvature.equivalent();
    CHECK_CLOSE(equivalent, mechanics::equivalent_moment(mechanics::unit_moments(triangle.bending * freedoms)), 1e-12,
                0.0);
    CHECK_CLOSE(equivalent * equivalent * triangle.area_in2, freedoms.dot(triangle.unit * freedoms), 1e-12, 0.0);
    std::array<double, 6> left{};
    mechanics::take_off(triangle, curvature, 2.5, left.data());
    const Eigen::Matrix<double, 6, 1> carried = 2.5 * triangle.unit * freedoms;
    for (int i = 0; i < 6; ++i)
        CHECK_CLOSE(left[static_cast<std::size_t>(i)], i == 4 ? 0.0 : -carried[i], 1e-12, 1e-12);
    const std::array<double, 3> share = mechanics::area_shares(triangle, {0.9, 0.5});
    CHECK_CLOSE(share[0] + share[1] + share[2], 1.0, 1e-12, 0.0);
    CHECK_CLOSE(share[0] * 0.2 + share[1] * 2.3 + share[2] * 0.9, 0.9, 1e-12, 0.0);
}
