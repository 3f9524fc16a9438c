// A shape that is cut by bisection and sums, against the same polygon cut corner by corner.
#include "mechanics/plane/shape.h"

#include "mechanics/plane/area_moments.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

using namespace toehold;
using namespace toehold::mechanics;

namespace {

/// 4 by 3 in about (1, 0.5), its corners rounded by 0.5 in with so many corners of their own.
Polygon rounded(int corners) {
    Polygon outline;
    for (int quarter = 0; quarter < 4; ++quarter) {
        const double x = 1.0 + (quarter == 0 || quarter == 3 ? 1.5 : -1.5), y = 0.5 + (quarter < 2 ? 1.0 : -1.0);
        for (int part = 0; part <= corners; ++part) {
            const double angle = 0.5 * std::numbers::pi * (quarter + static_cast<double>(part) / corners);
            outline.push_back({x + 0.5 * std::cos(angle), y + 0.5 * std::sin(angle)});
        }
    }
    return outline;
}

/// Like an L.
const Polygon notched{{0.0, 0.0}, {4.0, 0.0}, {4.0, 1.0}, {1.5, 1.0}, {1.5, 3.0}, {0.0, 3.0}};

void check_same(const Moments& found, const Moments& slow) {
    constexpr double rounding = 1e-12;
    CHECK_CLOSE(found.area, slow.area, 0.0, rounding);
    CHECK_CLOSE(found.x, slow.x, 0.0, rounding);
    CHECK_CLOSE(found.y, slow.y, 0.0, rounding);
    CHECK_CLOSE(found.xx, slow.xx, 0.0, rounding);
    CHECK_CLOSE(found.xy, slow.xy, 0.0, rounding);
    CHECK_CLOSE(found.yy, slow.yy, 0.0, rounding);
}

/// By up to three lines at once, in any direction, through the shape and past it.
void check_against_corners(const Polygon& outline) {
    const Shape shape(outline);
    std::mt19937 random(1901);
    std::uniform_real_distribution<double> angle(0.0, 2.0 * std::numbers::pi), away(-2.6, 2.6);
    for (int trial = 0; trial < 300; ++trial) {
        ShapePart part(shape);
        Polygon slow = outline;
        for (int cut = 0; cut < 1 + trial % 3; ++cut) {
            const double way = angle(random), x = std::cos(way), y = std::sin(way);
            const LinearField inside{away(random) - x * shape.reference().x - y * shape.reference().y, x, y};
            part.keep(inside);
            slow = clip_half_plane(slow, -inside.at_origin, -x, -y);
        }
        INFO(trial);
        check_same(part.moments(), area_moments(slow, shape.reference()).about_reference);
        if (slow.size() < 3 || part.empty()) continue;
        const double way = angle(random), x = std::cos(way), y = std::sin(way);
        const auto along = [&](Point a, Point b) { return x * a.x + y * a.y < x * b.x + y * b.y; };
        const auto ends = std::minmax_element(slow.begin(), slow.end(), along);
        const Interval extent = part.extent(x, y);
        CHECK_CLOSE(extent.from, x * ends.first->x + y * ends.first->y, 0.0, 1e-12);
        CHECK_CLOSE(extent.to, x * ends.second->x + y * ends.second->y, 0.0, 1e-12);
    }
}

}  // namespace

TEST_CASE("Half of a rectangle has the moments of a rectangle", "[closed-form]") {
    // 4 x 3 about its middle, y > 0: area 6, first moment 6 x 0.75, second 4 x 1.5^3/3 and 4^3/12 x 1.5.
    const Shape shape({{-2.0, -1.5}, {2.0, -1.5}, {2.0, 1.5}, {-2.0, 1.5}});
    REQUIRE(shape.convex());
    CHECK(shape.reference() == Point{});
    const Moments half = ShapePart(shape).keep({0.0, 0.0, 1.0}).moments();
    CHECK_CLOSE(half.area, 6.0, 1e-14, 0.0);
    CHECK_CLOSE(half.y, 4.5, 1e-14, 0.0);
    CHECK_CLOSE(half.yy, 4.5, 1e-14, 0.0);
    CHECK_CLOSE(half.xx, 8.0, 1e-14, 0.0);
    CHECK_CLOSE(half.xy, 0.0, 0.0, 1e-14);
    CHECK(ShapePart(shape).keep({-5.0, 0.0, 1.0}).empty());
    CHECK_CLOSE(ShapePart(shape).keep({5.0, 0.0, 1.0}).moments().area, 12.0, 1e-14, 0.0);
}

TEST_CASE("A line along a side keeps all of a shape or nothing that counts", "[unit]") {
    const Shape shape({{-2.0, -1.5}, {2.0, -1.5}, {2.0, 1.5}, {-2.0, 1.5}});
    CHECK_CLOSE(ShapePart(shape).keep({1.5, 0.0, 1.0}).moments().area, 12.0, 1e-14, 0.0);
    CHECK_CLOSE(ShapePart(shape).keep({-1.5, 0.0, 1.0}).moments().area, 0.0, 0.0, 1e-14);
}

TEST_CASE("What is left of a convex shape is what is left of its corners", "[property]") {
    const Polygon round = rounded(90);
    REQUIRE(Shape(round).convex());
    check_against_corners(round);
    check_against_corners(rounded(1));
}

TEST_CASE("A shape that is not convex is cut too", "[property]") {
    REQUIRE_FALSE(Shape(notched).convex());
    check_against_corners(notched);
}

TEST_CASE("The farthest corner lies no nearer than any other", "[property]") {
    const Shape shape(rounded(25));
    for (int step = 0; step < 360; ++step) {
        const double way = std::numbers::pi * step / 90.0 - 4.0, x = std::cos(way), y = std::sin(way);
        const Point far = shape.outline()[shape.farthest(way)];
        const bool farthest = std::all_of(shape.outline().begin(), shape.outline().end(), [&](Point corner) {
            return x * corner.x + y * corner.y <= x * far.x + y * far.y + 1e-12;
        });
        CHECK(farthest);
    }
}
