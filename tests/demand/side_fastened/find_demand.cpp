// A post on a member's side: held to statics, to its own mirror image and to the couple a reviewer works by hand.
#include "demand/demand_of.h"
#include "demand/mount.h"
#include "support/compare.h"
#include "support/shipped.h"
#include "support/side_detail.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace toehold;

namespace {

constexpr double quarter = 0.5 * std::numbers::pi;
constexpr demand::Sampling quick{.every = 18, .all_stiffnesses = false, .peaks = false, .measured = false};

demand::Demand quick_demand(const model::BaseDetail& detail) {
    const demand::Outcome outcome = demand::find_demand(test::resolved_by_shipped(detail), quick);
    INFO(format::english(outcome.failure));
    REQUIRE(outcome.demand);
    return *outcome.demand;
}

demand::State state_at(const demand::Demand& demand, double direction_rad) {
    const auto found = std::find_if(demand.states.begin(), demand.states.end(), [&](const demand::State& state) {
        return std::abs(state.direction_rad - direction_rad) < 1e-9;
    });
    REQUIRE(found != demand.states.end());
    return *found;
}

struct Balance {
    double x_lb = 0.0, y_lb = 0.0, z_lb = 0.0, about_x_lb_in = 0.0;
};

/// What fasteners, ties and contact put on the post, about the post's axis at the member's top.
Balance on_post(const catalog::Resolved& resolved, const demand::Demand& demand, const demand::State& state) {
    Balance balance;
    const auto add = [&](double y_in, double z_in, double y_lb, double z_lb) {
        balance.y_lb += y_lb;
        balance.z_lb += z_lb;
        balance.about_x_lb_in += y_in * z_lb - z_in * y_lb;
    };
    for (std::size_t i = 0; i < state.anchors.size(); ++i) {
        const catalog::Anchor& anchor = resolved.anchors[i];
        balance.x_lb -= state.anchors[i].shear_x_lb;
        add(anchor.at.y_in, anchor.at.z_in, anchor.axis.y * state.anchors[i].tension_lb, -state.anchors[i].shear_y_lb);
    }
    const auto& ties = on_side(resolved.detail).ties;
    for (std::size_t i = 0; i < ties.size(); ++i)
        add(0.0, -ties[i].below_top_in, resolved.anchors.front().axis.y * state.ties_lb[i], 0.0);
    for (std::size_t i = 0; i < state.supports.size(); ++i) {
        add(0.0, state.supports[i].at.y_in, demand.supports[i].presses.y * state.supports[i].force_lb, 0.0);
    }
    return balance;
}

}  // namespace

TEST_CASE("a post on a side is in balance in every state", "[closed-form]") {
    model::BaseDetail tied = test::side_detail();
    test::add_ties(tied);
    for (const model::BaseDetail& detail : {test::side_detail(), test::inside_detail(), test::bracket_detail(), tied}) {
        const catalog::Resolved resolved = test::resolved_by_shipped(detail);
        const demand::Demand demand = quick_demand(detail);
        for (const demand::State& state : demand.states) {
            const demand::LoadCase& load = demand.cases[state.load_case];
            const double push_x = load.push_lb * std::cos(state.direction_rad);
            const double push_y = load.push_lb * std::sin(state.direction_rad);
            const Balance balance = on_post(resolved, demand, state);
            CHECK(std::abs(balance.x_lb + push_x) < 1e-5 * (1.0 + load.push_lb));
            CHECK(std::abs(balance.y_lb + push_y) < 1e-5 * (1.0 + load.push_lb));
            CHECK(std::abs(balance.z_lb - load.down_lb) < 1e-5 * (1.0 + load.push_lb));
            CHECK(std::abs(balance.about_x_lb_in - push_y * load.height_in) < 1e-3 * (1.0 + load.push_lb));
        }
    }
}

TEST_CASE("outward, the upper bolt pulls at least the couple about the post's lower end", "[closed-form]") {
    const demand::Demand demand = quick_demand(test::side_detail());
    const demand::State outward = state_at(demand, quarter);
    // 200 lb, 36 in of guard and 1 in of boards over the rim; about z = -9 the arm to the bolt at -2 is 7 in.
    const double about_end_lb = 200.0 * (37.0 + 9.0) / 7.0;
    CHECK(outward.anchors[0].tension_lb > about_end_lb);
    CHECK(outward.anchors[0].tension_lb < 1.5 * about_end_lb);
    CHECK(outward.anchors[0].tension_lb + outward.anchors[1].tension_lb - outward.supports[0].force_lb ==
          Approx(200.0).margin(1e-4));
    REQUIRE(demand.side);
    CHECK_CLOSE(demand.side->about_bottom.tension_lb, about_end_lb, 1e-12, 0.0);
    CHECK_CLOSE(demand.side->about_bottom.arm_in, 7.0, 1e-12, 0.0);
    CHECK_CLOSE(demand.anchors[0].hand_edge_lb, about_end_lb, 1e-12, 0.0);
    // Inward it turns about the rim's top: 200 lb at 37 in, arm to the lower bolt 7 in.
    CHECK_CLOSE(demand.side->about_top.tension_lb, 200.0 * 37.0 / 7.0, 1e-12, 0.0);
    CHECK(state_at(demand, 3.0 * quarter).anchors[1].tension_lb > 200.0 * 37.0 / 7.0);
}

TEST_CASE("inside the rim an inward push does what an outward one does outside it", "[property]") {
    const demand::Demand outside = quick_demand(test::side_detail()), inside = quick_demand(test::inside_detail());
    for (const double direction : {0.0, quarter, 2.0 * quarter, 3.0 * quarter}) {
        const demand::State one = state_at(outside, direction);
        const demand::State other = state_at(inside, std::fmod(direction + 2.0 * quarter, 4.0 * quarter));
        for (std::size_t i = 0; i < one.anchors.size(); ++i) {
            CHECK_CLOSE(one.anchors[i].tension_lb, other.anchors[i].tension_lb, 1e-6, 1e-4);
            CHECK_CLOSE(one.anchors[i].shear_x_lb, -other.anchors[i].shear_x_lb, 1e-6, 1e-4);
        }
        CHECK_CLOSE(one.supports[0].force_lb, other.supports[0].force_lb, 1e-6, 1e-4);
        CHECK_CLOSE(one.rotation_rad, other.rotation_rad, 1e-6, 1e-9);
    }
}

TEST_CASE("along the rail two bolts up the face take the push and its moment in shear", "[closed-form]") {
    const demand::Demand demand = quick_demand(test::side_detail());
    const demand::State along = state_at(demand, 0.0);
    // 200 lb at 37 in over two bolts 5 in apart: about the lower one 200 (37 + 7)/5, about the upper 200 (37 + 2)/5.
    CHECK_CLOSE(std::abs(along.anchors[0].shear_x_lb), 200.0 * 44.0 / 5.0, 2e-3, 0.0);
    CHECK_CLOSE(std::abs(along.anchors[1].shear_x_lb), 200.0 * 39.0 / 5.0, 2e-3, 0.0);
    CHECK(along.anchors[0].shear_x_lb > 0.0);
    CHECK(along.anchors[1].shear_x_lb < 0.0);
}

TEST_CASE("the post's bending at its upper bolt is the push times its height over it", "[closed-form]") {
    const demand::Demand demand = quick_demand(test::side_detail());
    const demand::State outward = state_at(demand, quarter);
    REQUIRE_FALSE(outward.cuts.empty());
    double largest = 0.0;
    for (const demand::PostCut& cut : outward.cuts) largest = std::max(largest, std::abs(cut.bending_out_lb_in));
    // Contact above the bolt presses nothing under an outward push, so the moment there is the push's alone.
    CHECK_CLOSE(largest, 200.0 * (37.0 + 2.0), 2e-2, 0.0);
}

TEST_CASE("ties share the pull with the bolts beside them", "[property]") {
    model::BaseDetail tied = test::side_detail();
    test::add_ties(tied);
    const demand::State alone = state_at(quick_demand(test::side_detail()), quarter);
    const demand::State shared = state_at(quick_demand(tied), quarter);
    REQUIRE(shared.ties_lb.size() == 2);
    CHECK(shared.ties_lb[0] > 0.0);
    CHECK(shared.anchors[0].tension_lb < alone.anchors[0].tension_lb);
}

TEST_CASE("one bolt alone does not keep a post from turning along the rail", "[closed-form]") {
    model::BaseDetail detail = test::side_detail();
    on_side(detail).places.pop_back();
    const demand::Outcome outcome = demand::find_demand(test::resolved_by_shipped(detail), quick);
    CHECK_FALSE(outcome.demand);
    CHECK(outcome.overturns);
    CHECK(format::english(outcome.failure).find("along the rail") != std::string::npos);
}

TEST_CASE("a preview gives the same pulls at nominal stiffness", "[property]") {
    const catalog::Resolved resolved = test::resolved_by_shipped(test::side_detail());
    demand::Preview preview(resolved);
    const demand::PushResult push = preview.push(preview.worst_case(quarter), quarter);
    const demand::State state = state_at(quick_demand(test::side_detail()), quarter);
    CHECK_CLOSE(push.flexible[0].tension_lb, state.anchors[0].tension_lb, 1e-9, 0.0);
    CHECK(preview.polar_envelope(8).largest_anchor == 0);
    REQUIRE(push.hand_lb[0]);
    CHECK_CLOSE(*push.hand_lb[0], 200.0 * 46.0 / 7.0, 1e-9, 0.0);
}
