// What anchors in a rim put on the joists beside them, by the lever rule.
#include "checks/connection/board_pushes.h"

#include "checks/member/framing_example.h"
#include "support/compare.h"

using namespace toehold;
using checks::BoardPush;

namespace {

/// Only anchor A, in the rim, pushed 80 lb along it and 40 lb along the joists, which stand at these places.
std::vector<BoardPush> pushes_of_rim(double anchor_in, const std::vector<double>& joists_in) {
    catalog::Resolved resolved = test::framed_example();
    resolved.detail.framing.joists->members.clear();
    for (const double at_in : joists_in)
        resolved.detail.framing.joists->members.push_back({"J" + std::to_string(at_in), at_in});
    resolved.anchors.resize(1);
    resolved.anchors[0].at = {anchor_in, 12.75, 0.0};
    resolved.anchors[0].seat = model::Seat{2 + joists_in.size(), 0.75, 10.0};
    const demand::Demand demand =
        test::with_actions(resolved, 0, {test::actions(1.0, 0.0, 0.0, 0.0, 0.0)}, {0.0, 80.0, 40.0});
    return checks::board_pushes({resolved, demand}, model::members(resolved.detail.framing), 0);
}

}  // namespace

TEST_CASE("A push on a rim goes to the joists on either side by the lever rule", "[closed-form]") {
    // At x = 2 between -8 and 8: 10/16 to the farther side, 6/16 to the other.
    const std::vector<BoardPush> pushes = pushes_of_rim(2.0, {-8.0, 8.0});
    REQUIRE(pushes.size() == 2);
    CHECK(pushes[0].joist == 2);
    CHECK_CLOSE(pushes[0].across_lb, 30.0, 1e-12, 0.0);
    CHECK_CLOSE(pushes[0].along_lb, 15.0, 1e-12, 0.0);
    CHECK(pushes[1].joist == 3);
    CHECK_CLOSE(pushes[1].across_lb, 50.0, 1e-12, 0.0);
    CHECK_CLOSE(pushes[1].along_lb, 25.0, 1e-12, 0.0);
    CHECK_CLOSE(pushes[1].middle_in, 12.75, 1e-12, 0.0);
}

TEST_CASE("The joists beside a push are the nearest, and beyond the last one the last takes it all", "[closed-form]") {
    const std::vector<BoardPush> between = pushes_of_rim(6.0, {0.0, 8.0, 16.0});
    REQUIRE(between.size() == 2);
    CHECK(between[0].joist == 2);
    CHECK_CLOSE(between[0].across_lb, 20.0, 1e-12, 0.0);
    CHECK(between[1].joist == 3);
    CHECK_CLOSE(between[1].across_lb, 60.0, 1e-12, 0.0);
    const std::vector<BoardPush> beyond = pushes_of_rim(18.0, {0.0, 8.0, 16.0});
    REQUIRE(beyond.size() == 1);
    CHECK(beyond[0].joist == 4);
    CHECK_CLOSE(beyond[0].across_lb, 80.0, 1e-12, 0.0);
}

TEST_CASE("Two pushes on one joist stand between their places, each by its size", "[closed-form]") {
    // 30 lb at y = -6 and 90 lb at y = 2 of joist J1: (30 x -6 + 90 x 2)/120 = 0.
    catalog::Resolved resolved = test::framed_example();
    resolved.anchors.resize(2);
    for (catalog::Anchor& anchor : resolved.anchors) anchor.seat = model::Seat{2, 0.75, 10.0};
    resolved.anchors[0].at = {-8.0, -6.0, 0.0};
    resolved.anchors[1].at = {-8.0, 2.0, 0.0};
    demand::Demand demand = test::with_actions(resolved, 0, {test::actions(1.0, 0.0, 0.0, 0.0, 0.0)});
    demand.states[0].anchors[0].shear_x_lb = 30.0;
    demand.states[0].anchors[1].shear_x_lb = -90.0;
    const auto pushes = checks::board_pushes({resolved, demand}, model::members(resolved.detail.framing), 0);
    REQUIRE_FALSE(pushes.empty());
    CHECK(pushes[0].joist == 2);
    CHECK_CLOSE(pushes[0].across_lb, 120.0, 1e-12, 0.0);
    CHECK_CLOSE(pushes[0].middle_in, 0.0, 0.0, 1e-12);
    CHECK(pushes[0].first_in == -6.0);
    CHECK(pushes[0].last_in == 2.0);
}
