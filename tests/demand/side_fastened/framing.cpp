// What a post on a side puts on rim and joists, held to statics.
#include "demand/demand_of.h"
#include "demand/framing/lateral.h"
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

struct Sums {
    double drawn_lb = 0.0, turning_lb_in = 0.0, up_lb = 0.0;
};

/// Of all joists' ends at the rim.
Sums at_rim(const demand::FramingDemand& framing, const demand::FramingState& state) {
    Sums sums;
    for (std::size_t i = 0; i < framing.supports.size(); ++i) {
        if (framing.supports[i].kind != demand::MemberSupportKind::joist_to_rim) continue;
        sums.drawn_lb += state.reactions[i].along_lb;
        sums.turning_lb_in += state.reactions[i].moment_lb_in;
        sums.up_lb += state.reactions[i].up_lb;
    }
    return sums;
}

}  // namespace

TEST_CASE("joists at the rim take the push, its couple and its weight", "[closed-form]") {
    const catalog::Resolved resolved = test::resolved_by_shipped(test::side_detail());
    const demand::Outcome outcome = demand::find_demand(resolved, quick);
    REQUIRE(outcome.demand);
    const demand::Demand& demand = *outcome.demand;
    REQUIRE(demand.framing);
    REQUIRE(demand.framing->unstable.empty());
    for (std::size_t i = 0; i < demand.states.size(); ++i) {
        const demand::State& state = demand.states[i];
        const demand::ActingLoad load = acting_load(demand, state);
        const Sums sums = at_rim(*demand.framing, demand.framing->states[i]);
        const double outward_lb = load.push_lb * std::sin(state.direction_rad);
        // The joists end at the rim with their upper ends, so an outward push draws them off.
        CHECK(std::abs(sums.drawn_lb - outward_lb) < 1e-4 * (1.0 + load.push_lb));
        // Where joists meet the rim, at mid-depth of its back face: the push has 37 in and half of 9 1/4 in of arm, the
        // weight half the post's depth and the rim's 3 in.
        const double couple = outward_lb * (load.height_in + 0.5 * 9.25) - load.down_lb * (1.75 + 3.0);
        // Where the rim is pressed on some joist's end, contact takes its part.
        const bool drawn_everywhere = outward_lb > 0.9 * load.push_lb;
        if (drawn_everywhere) CHECK_CLOSE(std::abs(sums.turning_lb_in), std::abs(couple), 1e-3, 1e-3);
    }
}

TEST_CASE("a couple on a bar between two supports", "[closed-form]") {
    const catalog::Resolved resolved = test::resolved_by_shipped(test::side_detail());
    const demand::Frame frame = demand::make_frame(resolved);
    const std::optional<std::size_t> rim = model::find_member(resolved.detail.framing, "R1");
    REQUIRE(rim);
    demand::FramingState state;
    state.members.resize(frame.members.size());
    state.reactions.resize(frame.supports.size());
    // 1,600 lb in at x = 0, between joists at -8 and 8: a pair of 100 lb, and half of the couple on either side of it.
    demand::add_lateral(state, frame, {{*rim, 0.0, 0.0, 0.0, 1600.0}}, false, rim);
    double largest = 0.0;
    for (const demand::SupportReaction& reaction : state.reactions)
        largest = std::max(largest, std::abs(reaction.along_lb));
    CHECK_CLOSE(largest, 100.0, 1e-9, 0.0);
    CHECK_CLOSE(state.members[*rim].horizontal_moment_lb_in, 800.0, 1e-9, 0.0);
    CHECK_CLOSE(state.members[*rim].horizontal_shear_lb, 100.0, 1e-9, 0.0);
}

TEST_CASE("a pull and a pressure at one place of a rim are one force on it", "[closed-form]") {
    const catalog::Resolved resolved = test::resolved_by_shipped(test::side_detail());
    const demand::Frame frame = demand::make_frame(resolved);
    const std::optional<std::size_t> rim = model::find_member(resolved.detail.framing, "R1");
    REQUIRE(rim);
    demand::FramingState state;
    state.members.resize(frame.members.size());
    state.reactions.resize(frame.supports.size());
    // 1,500 lb drawn out and 1,300 lb pressed in between joists at -8 and 8: 200 lb, so P/2 and P L/4; couples cancel.
    demand::add_lateral(
        state, frame, {{*rim, 0.0, 1500.0, 0.0, 900.0}, {*rim, 0.0, -1300.0, 0.0, 0.0}, {*rim, 0.0, 0.0, 0.0, -900.0}},
        false, rim);
    CHECK_CLOSE(state.members[*rim].horizontal_shear_lb, 100.0, 1e-9, 0.0);
    CHECK_CLOSE(state.members[*rim].horizontal_moment_lb_in, 800.0, 1e-9, 0.0);
}

TEST_CASE("a rim pressed on a joist's end is kept square by that contact", "[closed-form]") {
    const catalog::Resolved resolved = test::resolved_by_shipped(test::side_detail());
    const demand::Frame frame = demand::make_frame(resolved);
    const std::optional<std::size_t> rim = model::find_member(resolved.detail.framing, "R1");
    REQUIRE(rim);
    const auto moment_left = [&](double inward_lb, double moment_lb_in) {
        demand::FramingState state;
        state.members.resize(frame.members.size());
        state.reactions.resize(frame.supports.size());
        const auto found = std::find_if(frame.supports.begin(), frame.supports.end(), [&](const auto& support) {
            return support.kind == demand::MemberSupportKind::joist_to_rim &&
                   frame.members[support.member].across_in == -8.0;
        });
        REQUIRE(found != frame.supports.end());
        const auto end = static_cast<std::size_t>(found - frame.supports.begin());
        state.reactions[end].moment_lb_in = moment_lb_in;
        demand::add_lateral(state, frame, {{*rim, -8.0, -inward_lb, 0.0}}, false, rim);
        return state.reactions[end].moment_lb_in;
    };
    // 600 lb on 1.5 in at 200 psi: 2 in high, so that its middle may stand (9.25 - 2)/2 from the joist's.
    CHECK_CLOSE(moment_left(600.0, 3000.0), 3000.0 - 600.0 * 0.5 * 7.25, 1e-9, 0.0);
    CHECK_CLOSE(moment_left(600.0, -3000.0), -3000.0 + 600.0 * 0.5 * 7.25, 1e-9, 0.0);
    CHECK(moment_left(600.0, 2000.0) == 0.0);
    // Drawn off, there is no contact.
    CHECK(moment_left(-600.0, 2000.0) == 2000.0);
}
