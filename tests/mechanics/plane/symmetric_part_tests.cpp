// The part of an area that is symmetric about a point, against closed forms.
#include "mechanics/plane/symmetric_part.h"

#include "mechanics/plane/area_moments.h"
#include "mechanics/shapes.h"
#include "support/compare.h"

using namespace toehold::mechanics;
using toehold::test::l_shape;
using toehold::test::rectangle;
using toehold::test::regular_polygon;

TEST_CASE("of a rectangle it is the effective footing, b - 2 e by l - 2 e", "[closed-form]") {
    // Meyerhof 1953: 8 x 3.5 with the resultant 1 in and 0.75 in off its middle: 6 x 2 = 12 in2
    const Moments part = moments(symmetric_part(rectangle(-4.0, 4.0, 0.0, 3.5), {1.0, 2.5}));
    CHECK_CLOSE(part.area, 12.0, 1e-12, 0.0);
    CHECK_CLOSE(part.x / part.area, 1.0, 1e-12, 0.0);
    CHECK_CLOSE(part.y / part.area, 2.5, 1e-12, 0.0);
    CHECK_CLOSE(moments(symmetric_part(rectangle(-4.0, 4.0, 0.0, 3.5), {0.0, 1.75})).area, 28.0, 1e-12, 0.0);
    CHECK(symmetric_part(rectangle(-4.0, 4.0, 0.0, 3.5), {5.0, 1.0}).empty());
}

TEST_CASE("of a circle it is the lens of two circles twice the eccentricity apart", "[closed-form]") {
    // 2 r^2 acos(e/r) - 2 e sqrt(r^2 - e^2) with r = 4 and e = 1.5; a polygon of 720 sides is 1e-5 smaller
    const double r = 4.0, e = 1.5;
    const double lens = 2.0 * r * r * std::acos(e / r) - 2.0 * e * std::sqrt(r * r - e * e);
    const Moments part = moments(symmetric_part(regular_polygon(720, r), {e, 0.0}));
    CHECK_CLOSE(part.area, lens, 1e-4, 0.0);
    CHECK_CLOSE(part.x / part.area, e, 1e-9, 0.0);
}

TEST_CASE("a notched outline is not convex, nor is a line", "[unit]") {
    CHECK(is_convex(rectangle(0.0, 1.0, 0.0, 2.0)));
    CHECK(is_convex(regular_polygon(720, 3.0)));
    CHECK_FALSE(is_convex(l_shape()));
    CHECK_FALSE(is_convex({{0.0, 0.0}, {1.0, 0.0}}));
    CHECK_FALSE(is_convex({}));
}
