// Area integrals and clipping against closed forms for triangles, rectangles, circles and cut shapes.
#include "mechanics/plane/area_moments.h"

#include "mechanics/shapes.h"
#include "support/compare.h"

#include <algorithm>

using namespace toehold::mechanics;
using toehold::test::l_shape;
using toehold::test::rectangle;
using toehold::test::regular_polygon;

namespace {

constexpr double tight = 1e-13;

void check_moments(const Moments& actual, const Moments& expected, double relative, double absolute) {
    CHECK_CLOSE(actual.area, expected.area, relative, absolute);
    CHECK_CLOSE(actual.x, expected.x, relative, absolute);
    CHECK_CLOSE(actual.y, expected.y, relative, absolute);
    CHECK_CLOSE(actual.xx, expected.xx, relative, absolute);
    CHECK_CLOSE(actual.xy, expected.xy, relative, absolute);
    CHECK_CLOSE(actual.yy, expected.yy, relative, absolute);
}

/// Of the box [x0, x1] x [y0, y1]: products of one-dimensional integrals.
Moments box_moments(double x0, double x1, double y0, double y1) {
    const double x[] = {x1 - x0, (x1 * x1 - x0 * x0) / 2.0, (x1 * x1 * x1 - x0 * x0 * x0) / 3.0};
    const double y[] = {y1 - y0, (y1 * y1 - y0 * y0) / 2.0, (y1 * y1 * y1 - y0 * y0 * y0) / 3.0};
    return {x[0] * y[0], x[1] * y[0], x[0] * y[1], x[2] * y[0], x[1] * y[1], x[0] * y[2]};
}

Moments combine(const Moments& a, double times, const Moments& b) {
    return {a.area + times * b.area, a.x + times * b.x,   a.y + times * b.y,
            a.xx + times * b.xx,     a.xy + times * b.xy, a.yy + times * b.yy};
}

}  // namespace

TEST_CASE("A rectangle off the origin has the textbook moments", "[closed-form]") {
    check_moments(moments(rectangle(1.0, 4.0, -2.0, 5.0)), box_moments(1.0, 4.0, -2.0, 5.0), tight, 0.0);
}

TEST_CASE("A right triangle with legs b and h has bh/2, b^2h/6, b^3h/12 and b^2h^2/24", "[closed-form]") {
    const double b = 3.0;
    const double h = 2.0;
    const Moments expected{b * h / 2.0,          b * b * h / 6.0,      b * h * h / 6.0,
                           b * b * b * h / 12.0, b * b * h * h / 24.0, b * h * h * h / 12.0};
    check_moments(moments({{0.0, 0.0}, {b, 0.0}, {0.0, h}}), expected, tight, 0.0);
}

TEST_CASE("An L is its box less the corner that was cut away", "[closed-form]") {
    const Moments box = box_moments(0.0, 6.0, 0.0, 6.0);
    const Moments corner = box_moments(2.5, 6.0, 3.0, 6.0);
    check_moments(moments(l_shape()), combine(box, -1.0, corner), tight, 0.0);
}

TEST_CASE("A regular polygon's area is n/2 r^2 sin(2 pi/n) and it tends to the circle", "[closed-form]") {
    const double radius = 4.0;
    for (const int sides : {5, 12, 720}) {
        const double turn = 2.0 * std::numbers::pi / sides;
        const double area = sides / 2.0 * radius * radius * std::sin(turn);
        // I = A r^2 (2 + cos(turn)) / 12 about any axis through the middle.
        const double second = area * radius * radius * (2.0 + std::cos(turn)) / 12.0;
        check_moments(moments(regular_polygon(sides, radius)), {area, 0.0, 0.0, second, 0.0, second}, 1e-12, 1e-11);
    }
    CHECK_CLOSE(moments(regular_polygon(720, radius)).area, std::numbers::pi * 16.0, 2e-5, 0.0);
}

TEST_CASE("Turning a polygon clockwise changes the sign of its area", "[closed-form]") {
    Polygon outline = l_shape();
    std::reverse(outline.begin(), outline.end());
    CHECK_CLOSE(moments(outline).area, -25.5, tight, 0.0);
}

TEST_CASE("A small square far from the origin keeps its digits", "[closed-form]") {
    const double far = 1e6;
    const Moments actual = moments(rectangle(far, far + 1.0, far, far + 1.0));
    CHECK_CLOSE(actual.area, 1.0, tight, 0.0);
    CHECK_CLOSE(actual.x, far + 0.5, tight, 0.0);
    CHECK_CLOSE(actual.xy, (far + 0.5) * (far + 0.5), tight, 0.0);
}

TEST_CASE("Clipping keeps the side where a + b x + c y is not positive", "[closed-form]") {
    const Polygon square = rectangle(-1.0, 1.0, -1.0, 1.0);
    CHECK_CLOSE(moments(clip_half_plane(square, 0.0, 1.0, 0.0)).area, 2.0, tight, 0.0);
    CHECK_CLOSE(moments(clip_half_plane(square, 0.0, 1.0, 0.0)).x, -1.0, tight, 0.0);
    CHECK_CLOSE(moments(clip_half_plane(square, 0.5, 1.0, 0.0)).area, 1.0, tight, 0.0);
    // x + y <= -1 leaves the triangle with legs 1 at the corner (-1, -1).
    CHECK_CLOSE(moments(clip_half_plane(square, 1.0, 1.0, 1.0)).area, 0.5, tight, 0.0);
    CHECK(clip_half_plane(square, -3.0, 1.0, 1.0) == square);
    CHECK(clip_half_plane(square, 3.0, 1.0, 1.0).empty());
}

TEST_CASE("A line through corners or along a side leaves no sliver", "[unit]") {
    const Polygon square = rectangle(-1.0, 1.0, -1.0, 1.0);
    CHECK(clip_half_plane(square, -1.0, 1.0, 0.0) == square);
    CHECK(clip_half_plane(square, 1.0, 1.0, 0.0).empty());
    const Polygon half = clip_half_plane(square, 0.0, 1.0, -1.0);
    CHECK(half.size() == 3);
    CHECK_CLOSE(moments(half).area, 2.0, tight, 0.0);
}

TEST_CASE("A half disc's centroid lies 4r/(3 pi) from its diameter", "[closed-form]") {
    const Moments half = moments(clip_half_plane(regular_polygon(3600, 2.0), 0.0, 0.0, -1.0));
    CHECK_CLOSE(half.y / half.area, 8.0 / (3.0 * std::numbers::pi), 1e-6, 0.0);
}

TEST_CASE("A cut that parts a U into two legs keeps both", "[closed-form]") {
    const Polygon u{{0.0, 0.0}, {5.0, 0.0}, {5.0, 4.0}, {4.0, 4.0}, {4.0, 1.0}, {1.0, 1.0}, {1.0, 4.0}, {0.0, 4.0}};
    const Moments legs = moments(clip_half_plane(u, 2.0, 0.0, -1.0));
    check_moments(legs, combine(box_moments(0.0, 1.0, 2.0, 4.0), 1.0, box_moments(4.0, 5.0, 2.0, 4.0)), tight, 0.0);
}

TEST_CASE("Clipping by a rectangle gives the part over one support", "[closed-form]") {
    const Moments foot = box_moments(1.0, 4.0, 2.0, 3.0);
    const Moments stem = box_moments(1.0, 2.5, 3.0, 5.0);
    check_moments(moments(clip_rectangle(l_shape(), 1.0, 4.0, 2.0, 5.0)), combine(foot, 1.0, stem), tight, 0.0);
    CHECK(clip_rectangle(l_shape(), 7.0, 9.0, 0.0, 1.0).empty());
}

TEST_CASE("Nothing has no area", "[unit]") {
    CHECK(moments({}).area == 0.0);
    CHECK(moments({{1.0, 2.0}}).area == 0.0);
    CHECK(moments({{1.0, 2.0}, {3.0, 4.0}}).area == 0.0);
    CHECK(clip_half_plane({{1.0, 2.0}, {3.0, 4.0}}, -9.0, 1.0, 0.0).empty());
}
