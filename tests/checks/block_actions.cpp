#include "checks/block/block_actions.h"

#include "support/compare.h"
#include "support/example.h"

#include <cmath>

using namespace toehold;
using namespace toehold::checks;

namespace {

BlockLoad up(double at_in, double force_lb) { return {at_in, force_lb, 0.0, 0.0, 0.0, 0.0}; }

/// Each block along y instead of x, everything about it mirrored in the line x = y.
catalog::Resolved mirrored(catalog::Resolved resolved) {
    for (model::Block& block : resolved.detail.framing.blocks) block.along = model::PlanAxis::y;
    for (catalog::Anchor& anchor : resolved.anchors) std::swap(anchor.at.x_in, anchor.at.y_in);
    return resolved;
}

demand::Demand mirrored(demand::Demand demand) {
    for (demand::State& state : demand.states) {
        for (demand::AnchorForce& anchor : state.anchors) std::swap(anchor.shear_x_lb, anchor.shear_y_lb);
        for (demand::SupportForce& support : state.supports) std::swap(support.at.x_in, support.at.y_in);
    }
    return demand;
}

}  // namespace

TEST_CASE("a load at midspan gives PL/4", "[closed-form]") {
    const BlockActions actions = block_actions({up(6.0, 800.0)}, 12.0);
    CHECK_CLOSE(actions.from.up_lb, 400.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.to.up_lb, 400.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.vertical_moment_lb_in, 800.0 * 12.0 / 4.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.vertical_shear_lb, 400.0, 1e-12, 0.0);
}

TEST_CASE("a load anywhere gives P a b/L", "[closed-form]") {
    const BlockActions actions = block_actions({up(3.0, -1000.0)}, 16.0);
    CHECK_CLOSE(actions.from.up_lb, -812.5, 1e-12, 0.0);
    CHECK_CLOSE(actions.to.up_lb, -187.5, 1e-12, 0.0);
    CHECK_CLOSE(actions.vertical_moment_lb_in, 1000.0 * 3.0 * 13.0 / 16.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.vertical_shear_lb, 812.5, 1e-12, 0.0);
}

TEST_CASE("equal loads at the third points give P L/3 and no shear between", "[closed-form]") {
    const BlockActions actions = block_actions({up(8.0, 500.0), up(4.0, 500.0)}, 12.0);  // in any order
    CHECK_CLOSE(actions.vertical_moment_lb_in, 500.0 * 12.0 / 3.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.vertical_shear_lb, 500.0, 1e-12, 0.0);
}

TEST_CASE("a couple at midspan gives C/L at the ends and C/2 in the block", "[closed-form]") {
    const BlockActions actions = block_actions({{5.0, 0.0, 0.0, 200.0, 0.0, 550.0}}, 10.0);
    CHECK_CLOSE(actions.from.up_lb, 55.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.to.up_lb, -55.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.vertical_moment_lb_in, 275.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.along_lb, 200.0, 1e-12, 0.0);
}

TEST_CASE("a torque goes to the ends by place: T (L - a)/L and T a/L", "[closed-form]") {
    const BlockActions actions = block_actions({{4.0, 0.0, 0.0, 0.0, 900.0, 0.0}}, 12.0);
    CHECK_CLOSE(actions.from.torque_lb_in, 600.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.to.torque_lb_in, 300.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.torque_lb_in, 600.0, 1e-12, 0.0);
}

TEST_CASE("ends always balance the loads in force and in moment", "[property]") {
    const double span = 14.5;
    for (int seed = 1; seed < 60; ++seed) {
        std::vector<BlockLoad> loads;
        double force = 0.0;
        double about_lower_end = 0.0;
        double torque = 0.0;
        for (int index = 0; index < 5; ++index) {
            const double wave = std::sin(seed * 1.7 + index * 2.3);
            const BlockLoad load{
                0.5 * span * (1.0 + std::cos(seed + index)), 900.0 * wave, 0.0, 0.0, 300.0 * wave, 40.0 * wave};
            force += load.up_lb;
            about_lower_end += load.up_lb * load.at_in - load.couple_lb_in;
            torque += load.torque_lb_in;
            loads.push_back(load);
        }
        const BlockActions actions = block_actions(loads, span);
        CHECK_CLOSE(actions.from.up_lb + actions.to.up_lb, force, 0.0, 1e-9);
        CHECK_CLOSE(actions.to.up_lb * span, about_lower_end, 0.0, 1e-8);
        CHECK_CLOSE(actions.from.torque_lb_in + actions.to.torque_lb_in, torque, 0.0, 1e-9);
    }
}

TEST_CASE("anchors pull their block up, push it across and twist it from its top", "[closed-form]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = test::example_demand(resolved, {1000.0, 0.0, 50.0}, {0.0, 2000.0});
    // B1 holds A and B, 5.25 in from either end of 14.5 in, on its axis; 50 lb outward each at the top, 2.75 in up
    const BlockActions heel = block_actions({resolved, demand}, demand.states[0], 0);
    CHECK_CLOSE(heel.from.up_lb, 1000.0, 1e-12, 0.0);
    CHECK_CLOSE(heel.to.across_lb, 50.0, 1e-12, 0.0);
    CHECK_CLOSE(heel.vertical_moment_lb_in, 1000.0 * 5.25, 1e-12, 0.0);
    CHECK_CLOSE(heel.horizontal_moment_lb_in, 50.0 * 5.25, 1e-12, 0.0);
    CHECK_CLOSE(heel.from.torque_lb_in, -50.0 * 2.75, 1e-12, 0.0);
    CHECK_CLOSE(heel.along_lb, 0.0, 0.0, 1e-12);
    // B2 holds C and D and bears 2000 lb at its middle: no vertical force is left, but moment:
    // at the middle 2000 x 14.5/4 = 7250 of the bearing less 1000 x 5.25 = 5250 of the anchors
    const BlockActions toe = block_actions({resolved, demand}, demand.states[0], 1);
    CHECK_CLOSE(toe.from.up_lb, 0.0, 0.0, 1e-9);
    CHECK_CLOSE(toe.vertical_moment_lb_in, 2000.0, 1e-9, 0.0);
}

TEST_CASE("a force beside the block's axis twists it by its distance", "[closed-form]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].across_in = -3.25;  // A and B stand 0.75 in outward of its axis
    const demand::Demand demand = test::example_demand(resolved, {1000.0, 0.0, 0.0}, {});
    const BlockActions actions = block_actions({resolved, demand}, demand.states[0], 0);
    CHECK_CLOSE(actions.from.torque_lb_in, 750.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.to.torque_lb_in, 750.0, 1e-12, 0.0);
}

TEST_CASE("a push along the block tips it: the end pushed to presses down", "[closed-form]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = test::example_demand(resolved, {0.0, 50.0, 0.0}, {});
    // two anchors of 50 lb, 2.75 in above the axis: 275 lb in over 14.5 in
    const BlockActions actions = block_actions({resolved, demand}, demand.states[0], 0);
    CHECK_CLOSE(actions.along_lb, 100.0, 1e-12, 0.0);
    CHECK_CLOSE(actions.from.up_lb, 275.0 / 14.5, 1e-12, 0.0);
    CHECK_CLOSE(actions.to.up_lb, -275.0 / 14.5, 1e-12, 0.0);
}

TEST_CASE("a block along y feels what its mirror image along x feels", "[property]") {
    const catalog::Resolved resolved = test::example_resolved();
    demand::Demand demand = test::example_demand(resolved, {700.0, 30.0, -50.0}, {400.0, 900.0});
    demand.states[0].supports[0].at = {1.0, -2.0};
    const catalog::Resolved other = mirrored(resolved);
    const demand::Demand other_demand = mirrored(demand);
    for (std::size_t block = 0; block < 2; ++block) {
        const BlockActions a = block_actions({resolved, demand}, demand.states[0], block);
        const BlockActions b = block_actions({other, other_demand}, other_demand.states[0], block);
        CHECK_CLOSE(a.from.up_lb, b.from.up_lb, 1e-12, 1e-9);
        CHECK_CLOSE(a.to.torque_lb_in, b.to.torque_lb_in, 1e-12, 1e-9);
        CHECK_CLOSE(a.vertical_moment_lb_in, b.vertical_moment_lb_in, 1e-12, 1e-9);
        CHECK_CLOSE(a.along_lb, b.along_lb, 1e-12, 1e-9);
    }
}

TEST_CASE("only blocks under an anchor or the plate carry load", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    model::Block far = resolved.detail.framing.blocks[0];
    far.id = "B9";
    far.across_in = 40.0;
    resolved.detail.framing.blocks.push_back(far);
    resolved.blocks.push_back(resolved.blocks[0]);
    demand::Demand demand = test::example_demand(resolved, {700.0, 0.0, 0.0}, {});
    CHECK(loaded_blocks({resolved, demand}) == std::vector<std::size_t>{0, 1});
    for (catalog::Anchor& anchor : resolved.anchors) anchor.seat.reset();
    CHECK(loaded_blocks({resolved, demand}).empty());
    demand = test::example_demand(resolved, {700.0, 0.0, 0.0}, {0.0});
    CHECK(loaded_blocks({resolved, demand}) == std::vector<std::size_t>{0});
    demand.states.clear();
    CHECK(loaded_blocks({resolved, demand}).empty());
}
