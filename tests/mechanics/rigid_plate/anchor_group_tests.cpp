// Hand calculations of a group of anchors against arithmetic and statics on paper.
#include "mechanics/rigid_plate/anchor_group.h"

#include "mechanics/shapes.h"
#include "support/compare.h"

#include <rapidcheck.h>

using namespace toehold::mechanics;
using toehold::test::rectangle;

namespace {

constexpr double degree = std::numbers::pi / 180.0;
const std::vector<Point> square{{-2.0, -2.0}, {2.0, -2.0}, {2.0, 2.0}, {-2.0, 2.0}};

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

// Common practice for rails bolted to a deck's edge: the load at the rail's height over the distance between the bolts.
TEST_CASE("500 lb at 36 in over a 9 in arm pulls 2000 lb", "[closed-form]") {
    const std::vector<Point> bolts{{0.0, -4.5}, {0.0, 4.5}};
    const HandTension hand =
        hand_tension(bolts, rectangle(-2.0, 2.0, -6.0, 6.0), 500.0 * 36.0, 90.0 * degree, LeverArm::to_anchor);
    CHECK_CLOSE(hand.lever_arm_in, 9.0, 1e-12, 0.0);
    CHECK(hand.heel_anchors == 1);
    CHECK_CLOSE(hand.tension_lb[0], 2000.0, 1e-12, 0.0);
    CHECK(hand.tension_lb[1] == 0.0);
}

TEST_CASE("A row of two shares the pull over the arm to the toe edge", "[closed-form]") {
    const HandTension hand =
        hand_tension(square, rectangle(-2.5, 2.5, -2.5, 2.5), 200.0 * 42.0, 90.0 * degree, LeverArm::to_edge);
    CHECK_CLOSE(hand.lever_arm_in, 4.5, 1e-12, 0.0);
    CHECK(hand.heel_anchors == 2);
    CHECK_CLOSE(hand.tension_lb[0], 8400.0 / 9.0, 1e-12, 0.0);
    CHECK_CLOSE(hand.tension_lb[1], 8400.0 / 9.0, 1e-12, 0.0);
    CHECK(hand.tension_lb[2] == 0.0);
    CHECK(hand.tension_lb[3] == 0.0);
}

TEST_CASE("A diagonal push hangs on one corner anchor over the diagonal", "[closed-form]") {
    const HandTension hand =
        hand_tension(square, rectangle(-2.5, 2.5, -2.5, 2.5), 8400.0, 45.0 * degree, LeverArm::to_edge);
    CHECK(hand.heel_anchors == 1);
    CHECK_CLOSE(hand.lever_arm_in, 4.5 * std::numbers::sqrt2, 1e-12, 0.0);
    CHECK_CLOSE(hand.tension_lb[0], 8400.0 / (4.5 * std::numbers::sqrt2), 1e-12, 0.0);
}

TEST_CASE("Anchors within one percent of the row's arm pull with it", "[unit]") {
    const std::vector<Point> anchors{{-1.0, -2.0}, {1.0, -1.97}, {0.0, -1.95}};
    const HandTension hand =
        hand_tension(anchors, rectangle(-3.0, 3.0, -3.0, 2.0), 1000.0, 90.0 * degree, LeverArm::to_edge);
    CHECK(hand.heel_anchors == 2);
    CHECK(hand.tension_lb[2] == 0.0);
    CHECK_CLOSE(hand.tension_lb[0] * 4.0 + hand.tension_lb[1] * 3.97, 1000.0, 1e-12, 0.0);
}

TEST_CASE("Opposite pushes on a symmetric plate swap the rows", "[property]") {
    const Polygon outline = rectangle(-2.5, 2.5, -2.5, 2.5);
    for (const LeverArm arm : {LeverArm::to_edge, LeverArm::to_anchor}) {
        for (int direction = 0; direction < 360; direction += 15) {
            const HandTension there = hand_tension(square, outline, 8400.0, direction * degree, arm);
            const HandTension back = hand_tension(square, outline, 8400.0, (direction + 180) * degree, arm);
            CHECK_CLOSE(there.lever_arm_in, back.lever_arm_in, 1e-12, 0.0);
            for (std::size_t index = 0; index < 4; ++index) {
                CHECK_CLOSE(there.tension_lb[index], back.tension_lb[(index + 2) % 4], 1e-12, 1e-9);
            }
        }
    }
}

TEST_CASE("No lever arm gives no tensions", "[unit]") {
    const Polygon outline = rectangle(-2.5, 2.5, -2.5, 2.5);
    // One row square to the push has no second row to turn about.
    const std::vector<Point> row{{-2.0, 0.3}, {2.0, 0.3}};
    for (const double direction : {90.0, 270.0}) {
        const HandTension hand = hand_tension(row, outline, 8400.0, direction * degree, LeverArm::to_anchor);
        CHECK(hand.lever_arm_in == 0.0);
        CHECK(hand.heel_anchors == 0);
        CHECK(hand.tension_lb == std::vector<double>{0.0, 0.0});
    }
    // An anchor ahead of the edge the plate would turn over.
    const std::vector<Point> ahead{{0.0, 3.0}};
    CHECK(hand_tension(ahead, outline, 8400.0, 90.0 * degree, LeverArm::to_edge).heel_anchors == 0);
    CHECK(hand_tension({}, outline, 8400.0, 0.0, LeverArm::to_edge).tension_lb.empty());
    CHECK(hand_tension(row, {}, 8400.0, 0.0, LeverArm::to_edge).heel_anchors == 0);
}

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
