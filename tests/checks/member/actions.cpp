// What the checks of members read from the demand: statics of one block, held up and down at ends that turn freely.
#include "checks/member/actions.h"

#include "checks/member/framing_example.h"
#include "demand/framing/find_framing.h"
#include "support/compare.h"

#include <utility>

using namespace toehold;
using namespace toehold::checks;

namespace {

/// B1 of the example, 14.5 in long from x = -7.25, with these pulls at these places along it, on its axis.
demand::MemberActions pulled(const std::vector<std::pair<double, double>>& at_and_pull) {
    catalog::Resolved resolved = test::example_resolved();
    resolved.anchors.resize(at_and_pull.size());
    for (std::size_t index = 0; index < at_and_pull.size(); ++index) {
        resolved.anchors[index].at = {at_and_pull[index].first - 7.25, -2.5};
        resolved.anchors[index].seat->member = 0;
    }
    demand::Demand demand = test::example_demand(resolved, {}, {});
    for (std::size_t index = 0; index < at_and_pull.size(); ++index)
        demand.states[0].anchors[index].tension_lb = at_and_pull[index].second;
    demand.framing = demand::find_framing(resolved, demand);
    return actions_of({resolved, demand}, 0, 0);
}

/// Everything mirrored in the line x = y.
catalog::Resolved mirrored(catalog::Resolved resolved) {
    resolved.detail.framing.joists->along = model::PlanAxis::x;
    for (model::Block& block : resolved.detail.framing.blocks) block.along = model::PlanAxis::y;
    for (catalog::Anchor& anchor : resolved.anchors) std::swap(anchor.at.x_in, anchor.at.y_in);
    return resolved;
}

}  // namespace

TEST_CASE("a pull at midspan gives PL/4, one anywhere P a b/L, two at the third points P L/3", "[closed-form]") {
    CHECK_CLOSE(pulled({{7.25, 800.0}}).vertical_moment_lb_in, 800.0 * 14.5 / 4.0, 1e-7, 0.0);
    CHECK_CLOSE(pulled({{7.25, 800.0}}).vertical_shear_lb, 400.0, 1e-7, 0.0);
    CHECK_CLOSE(pulled({{3.0, 1000.0}}).vertical_moment_lb_in, 1000.0 * 3.0 * 11.5 / 14.5, 1e-7, 0.0);
    CHECK_CLOSE(pulled({{3.0, 1000.0}}).vertical_shear_lb, 1000.0 * 11.5 / 14.5, 1e-7, 0.0);
    const demand::MemberActions thirds = pulled({{14.5 / 3.0, 500.0}, {29.0 / 3.0, 500.0}});
    CHECK_CLOSE(thirds.vertical_moment_lb_in, 500.0 * 14.5 / 3.0, 1e-7, 0.0);
    CHECK_CLOSE(thirds.vertical_shear_lb, 500.0, 1e-7, 0.0);
}

TEST_CASE("bearing between the anchors of a block bends it down between them", "[closed-form]") {
    // B2 holds C and D, 1000 lb each 5.25 in from its ends, and bears 2000 lb at its middle: nothing is left at the
    // ends; at the middle 2000 x 14.5/4 = 7250 of the bearing less 1000 x 5.25 = 5250 of the anchors
    const catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = test::example_demand(resolved, {1000.0, 0.0, 0.0}, {0.0, 2000.0});
    const demand::MemberActions& toe = actions_of({resolved, demand}, 0, 1);
    CHECK_CLOSE(toe.vertical_moment_lb_in, 2000.0, 1e-6, 0.0);
    CHECK_CLOSE(toe.vertical_shear_lb, 1000.0, 1e-6, 0.0);
}

TEST_CASE("a push along the block at its top tips it", "[closed-form][A15]") {
    // 50 lb on A and B, 2.75 in and 1 in of decking above the axis: 375 lb in over 14.5 in: 25.862 lb at the ends, and
    // at A, 5.25 in from the lower end, 25.862 x 5.25 = 135.78 lb in. 0.5.0 left the decking out.
    const catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = test::example_demand(resolved, {0.0, 50.0, 0.0}, {});
    const demand::MemberActions& actions = actions_of({resolved, demand}, 0, 0);
    CHECK_CLOSE(actions.vertical_shear_lb, 25.862, 0.0, 0.001);
    CHECK_CLOSE(actions.vertical_moment_lb_in, 135.78, 0.0, 0.01);
    CHECK_CLOSE(actions.horizontal_shear_lb, 0.0, 0.0, 1e-9);
}

TEST_CASE("a block along y feels what its mirror image along x feels", "[property]") {
    const catalog::Resolved resolved = test::example_resolved();
    const catalog::Resolved other = mirrored(resolved);
    const demand::Demand demand = test::example_demand(resolved, {700.0, 30.0, 50.0}, {});
    const demand::Demand other_demand = test::example_demand(other, {700.0, 50.0, 30.0}, {});
    for (const std::size_t block : {std::size_t{0}, std::size_t{1}}) {
        const demand::MemberActions& a = actions_of({resolved, demand}, 0, block);
        const demand::MemberActions& b = actions_of({other, other_demand}, 0, block);
        CHECK_CLOSE(b.vertical_moment_lb_in, a.vertical_moment_lb_in, 1e-7, 0.0);
        CHECK_CLOSE(b.horizontal_moment_lb_in, a.horizontal_moment_lb_in, 1e-7, 0.0);
        CHECK_CLOSE(b.vertical_shear_lb, a.vertical_shear_lb, 1e-7, 0.0);
        CHECK_CLOSE(b.horizontal_shear_lb, a.horizontal_shear_lb, 1e-7, 0.0);
        CHECK_CLOSE(b.torque_lb_in, a.torque_lb_in, 1e-7, 0.0);
    }
}

TEST_CASE("members that some state loads are the loaded ones, each once and in order", "[unit]") {
    const catalog::Resolved resolved = test::framed_example();
    const demand::Demand demand =
        test::with_actions(resolved, 3, {test::actions(0, 0, 0, 0, 0), test::actions(0, 0, 0, 0, 2e-6)});
    CHECK(loaded_members({resolved, demand}) == std::vector<std::size_t>{3});
    // pulls on both blocks reach both joists and the rim as well
    const demand::Demand whole = test::example_demand(resolved, {500.0, 0.0, 0.0}, {});
    CHECK(loaded_members({resolved, whole}) == std::vector<std::size_t>{0, 1, 2, 3, 4});
}
