// Shear on a group of anchors: the elastic method's sums, and statics on paper.
#include "mechanics/shear.h"

#include "mechanics/shapes.h"
#include "support/compare.h"

#include <rapidcheck.h>

using namespace toehold::mechanics;

namespace {

Point sum_of(const std::vector<Point>& forces) {
    Point sum;
    for (const Point& force : forces) {
        sum.x += force.x;
        sum.y += force.y;
    }
    return sum;
}

double moment_about_origin(const std::vector<Point>& anchors, const std::vector<Point>& forces) {
    double sum = 0.0;
    for (std::size_t index = 0; index < anchors.size(); ++index) {
        sum += anchors[index].x * forces[index].y - anchors[index].y * forces[index].x;
    }
    return sum;
}

}  // namespace

TEST_CASE("A centred group shares the push equally", "[closed-form]") {
    const std::vector<Point> anchors{{-2.0, -2.5}, {2.0, -2.5}, {2.0, 2.5}, {-2.0, 2.5}};
    const ShearShares shares = share_shear(anchors, {30.0, 200.0});
    REQUIRE(shares.balanced);
    CHECK(shares.twist_lb_in == 0.0);
    for (const Point& force : shares.force_lb) {
        CHECK_CLOSE(force.x, 7.5, 1e-14, 0.0);
        CHECK_CLOSE(force.y, 50.0, 1e-14, 0.0);
    }
}

// Two anchors at x = 1 and x = 3, push 200 in +y at the origin. Statics about either anchor: the near one carries
// 200 * 3/2 = 300, the far one 200 * -1/2 = -100.
TEST_CASE("A pair beside the push carries it as a lever does", "[closed-form]") {
    const std::vector<Point> anchors{{1.0, 0.0}, {3.0, 0.0}};
    const ShearShares shares = share_shear(anchors, {0.0, 200.0});
    REQUIRE(shares.balanced);
    CHECK_CLOSE(shares.twist_lb_in, -400.0, 1e-14, 0.0);
    CHECK_CLOSE(shares.force_lb[0].y, 300.0, 1e-14, 0.0);
    CHECK_CLOSE(shares.force_lb[1].y, -100.0, 1e-14, 0.0);
    CHECK_CLOSE(shares.force_lb[0].x, 0.0, 0.0, 1e-12);
}

TEST_CASE("A single anchor takes the push only if it stands on its line", "[unit]") {
    const std::vector<Point> on_line{{0.0, -2.0}};
    CHECK(share_shear(on_line, {0.0, 200.0}).balanced);
    const std::vector<Point> at_origin{{0.0, 0.0}};
    CHECK(share_shear(at_origin, {120.0, 160.0}).balanced);
    const std::vector<Point> beside{{1.5, 0.0}};
    const ShearShares shares = share_shear(beside, {0.0, 200.0});
    CHECK_FALSE(shares.balanced);
    CHECK_CLOSE(shares.force_lb[0].y, 200.0, 1e-14, 0.0);
    CHECK_CLOSE(shares.twist_lb_in, -300.0, 1e-14, 0.0);
}

TEST_CASE("No anchor balances nothing but no force", "[unit]") {
    CHECK(share_shear({}, {}).balanced);
    CHECK_FALSE(share_shear({}, {1.0, 0.0}).balanced);
}

TEST_CASE("Shares add up to the push in force and in moment about the origin", "[property]") {
    const bool holds = rc::check("shear shares balance", [] {
        const auto coordinate = rc::gen::inRange(-600, 600);
        const auto pairs = *rc::gen::container<std::vector<std::pair<int, int>>>(rc::gen::pair(coordinate, coordinate));
        std::vector<Point> anchors;
        anchors.reserve(pairs.size());
        for (const auto& [x, y] : pairs) anchors.push_back({x / 100.0, y / 100.0});
        const Point force{*coordinate / 3.0, *coordinate / 3.0};
        const ShearShares shares = share_shear(anchors, force);
        RC_PRE(shares.balanced && !anchors.empty());
        const Point sum = sum_of(shares.force_lb);
        RC_ASSERT(toehold::test::close(sum.x, force.x, 0.0, 1e-9));
        RC_ASSERT(toehold::test::close(sum.y, force.y, 0.0, 1e-9));
        // The push passes through the origin, so the shares have no moment about it.
        RC_ASSERT(std::abs(moment_about_origin(anchors, shares.force_lb)) < 1e-8);
    });
    REQUIRE(holds);
}
