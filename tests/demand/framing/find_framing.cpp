// Every state's forces followed down to the joists' supports, held to statics worked by hand.
#include "demand/framing/find_framing.h"
#include "demand/framing/member_supports.h"
#include "model/member.h"
#include "support/compare.h"
#include "support/example.h"

#include <cmath>

using namespace toehold;
using demand::FramingDemand;
using demand::MemberSupportKind;

namespace {

/// Turns freely in the member's upright plane.
model::ReportedConnector hanger(double couple_arm_in) {
    return {"hardware", "test value", 1000.0, 1000.0, 400.0, couple_arm_in};
}

/// Keeps the two members square.
model::ReportedConnector hardware(double couple_arm_in) {
    model::ReportedConnector connector = hanger(couple_arm_in);
    connector.pull_lb = 500.0;
    connector.height_in = 6.0;
    return connector;
}

/// The example between joists that run from a ledger to a beam, alike on both sides.
catalog::Resolved on_joists(double block_couple_arm_in = 3.5) {
    catalog::Resolved resolved = test::example_resolved();
    model::Framing& framing = resolved.detail.framing;
    framing.joists->from_in = -96.0;
    framing.joists->to_in = 12.0;
    framing.supports = {{"S1", model::JoistSupport::Kind::ledger, -96.0, 0.0, hanger(1.5)},
                        {"S2", model::JoistSupport::Kind::beam, -12.0, 3.5, hanger(1.5)}};
    for (model::Block& block : framing.blocks) {
        block.from_end.connection = hardware(block_couple_arm_in);
        block.to_end.connection = hardware(block_couple_arm_in);
    }
    return resolved;
}

/// Pulls of 900 lb on A and B, bearing of 1800 lb under block B2: an outward push's couple of 1800 lb x 5 in.
demand::Demand couple_on(const catalog::Resolved& resolved) {
    demand::Demand demand = test::example_demand(resolved, {}, {0.0, 1800.0});
    for (const std::size_t anchor : {std::size_t{0}, std::size_t{1}}) {
        demand.states[0].anchors[anchor].tension_lb = 900.0;
    }
    demand.framing = demand::find_framing(resolved, demand);
    return demand;
}

double up_at(const FramingDemand& framing, std::size_t support) {
    double sum = 0.0;
    for (std::size_t index = 0; index < framing.supports.size(); ++index) {
        if (framing.supports[index].joist_support == support) sum += framing.states[0].reactions[index].up_lb;
    }
    return sum;
}

}  // namespace

TEST_CASE("blocks between joists that stand still: each end takes half of a load at its middle", "[closed-form]") {
    const catalog::Resolved resolved = test::example_resolved();
    const demand::Demand demand = couple_on(resolved);
    REQUIRE(demand.framing);
    CHECK_FALSE(demand.framing->joists_described);
    REQUIRE(demand.framing->supports.size() == 4);
    const auto& reactions = demand.framing->states.at(0).reactions;
    CHECK_CLOSE(reactions[0].up_lb, 900.0, 1e-9, 0.0);  // B1: 900 at -2 and 900 at 2 in, ends at -7.25 and 7.25 in
    CHECK_CLOSE(reactions[1].up_lb, 900.0, 1e-9, 0.0);
    CHECK_CLOSE(reactions[2].up_lb, -900.0, 1e-9, 0.0);
    // Ends turn freely: M = 900 (7.25 - 2) under the anchors of B1, 1800 x 14.5/4 at the middle of B2.
    CHECK_CLOSE(demand.framing->states[0].members.at(0).vertical_moment_lb_in, 900.0 * 5.25, 1e-9, 0.0);
    CHECK_CLOSE(demand.framing->states[0].members.at(1).vertical_moment_lb_in, 1800.0 * 14.5 / 4.0, 1e-9, 0.0);
}

TEST_CASE("joists on two supports take a couple as equal and opposite forces", "[closed-form]") {
    const catalog::Resolved resolved = on_joists();
    const demand::Demand demand = couple_on(resolved);
    REQUIRE(demand.framing);
    CHECK(demand.framing->joists_described);
    REQUIRE(demand.framing->unstable.empty());
    // 1800 lb up at y = -2.5, down at y = 2.5: 9000 lb in over the 84 in between ledger and beam.
    CHECK_CLOSE(up_at(*demand.framing, 0), 9000.0 / 84.0, 1e-6, 0.0);
    CHECK_CLOSE(up_at(*demand.framing, 1), -9000.0 / 84.0, 1e-6, 0.0);
    // Each joist: its half of the couple sits beyond the beam, so the moment over the beam is 4500 lb in.
    const auto& joist = demand.framing->states[0].members.at(2);
    CHECK_CLOSE(joist.vertical_moment_lb_in, 4500.0, 1e-6, 0.0);
}

TEST_CASE("a block's end that turns freely twists its joist by its force times half the joist's width",
          "[closed-form]") {
    catalog::Resolved resolved = on_joists();
    for (model::Block& block : resolved.detail.framing.blocks) {
        for (model::BlockEnd* end : {&block.from_end, &block.to_end})
            std::get<model::ReportedConnector>(end->connection).pull_lb = 0.0;
    }
    const demand::Demand demand = couple_on(resolved);
    REQUIRE(demand.framing);
    // 900 lb x 0.75 in up at -2.5 and down at 2.5: between the two the torque is 675 lb in less what is carried back
    // through the beam's hold, which is soft beside 5 in of joist; beyond them nothing twists towards the free end.
    const auto& joist = demand.framing->states[0].members.at(2);
    CHECK(joist.torque_lb_in <= 675.0 + 1e-6);
    CHECK(joist.torque_lb_in > 0.5 * 675.0);
}

TEST_CASE("forces on the supports balance every state of a real demand", "[property]") {
    catalog::Resolved resolved = on_joists();
    const demand::Outcome outcome = demand::find_demand(resolved);
    REQUIRE(outcome.demand);
    const FramingDemand& framing = outcome.demand->framing.value();
    REQUIRE(framing.states.size() == outcome.demand->states.size());
    // The push comes in at the plate's underside: the decking and half the block's depth above the block's axis.
    const double layers_in = model::thickness_in(on_deck(resolved.detail).layers);
    REQUIRE(layers_in > 0.0);
    const double from_axis_in = layers_in + 0.5 * 5.5;
    for (std::size_t s = 0; s < framing.states.size(); s += 97) {
        const demand::State& state = outcome.demand->states[s];
        double net = 0.0, about_x = 0.0;
        for (std::size_t i = 0; i < state.anchors.size(); ++i) {
            net += state.anchors[i].tension_lb;
            about_x += state.anchors[i].tension_lb * resolved.anchors[i].at.y_in;
            about_x -= state.anchors[i].shear_y_lb * from_axis_in;
        }
        for (const demand::SupportForce& support : state.supports) {
            net -= support.force_lb;
            about_x -= support.force_lb * support.at.y_in;
        }
        double held = 0.0, held_about_x = 0.0;
        for (std::size_t index = 0; index < framing.supports.size(); ++index) {
            if (framing.supports[index].kind != MemberSupportKind::joist_support) continue;
            const demand::SupportReaction& forces = framing.states[s].reactions[index];
            held += forces.up_lb;
            held_about_x +=
                forces.up_lb * resolved.detail.framing.supports[*framing.supports[index].joist_support].at_in +
                forces.moment_lb_in;
        }
        CHECK_CLOSE(held, net, 1e-6, 1e-4);
        CHECK_CLOSE(held_about_x, about_x, 1e-6, 1e-2);
        // By statics alone, whatever the anchors do: the push at its height above the plate's underside about that
        // axis.
        const demand::LoadCase& load = outcome.demand->cases[state.load_case];
        if (load.wind_lb != 0.0) continue;
        const double arm_in = load.height_in + from_axis_in;
        CHECK_CLOSE(held_about_x, -load.push_lb * std::sin(state.direction_rad) * arm_in, 1e-6, 1e-2);
    }
}

TEST_CASE("a member that nothing holds is given a nominal support, and says so", "[unit]") {
    catalog::Resolved resolved = on_joists();
    resolved.detail.framing.blocks[0].from_end.connection = std::monostate{};
    resolved.detail.framing.blocks[0].to_end.connection = std::monostate{};
    const std::vector<demand::MemberSupport> supports = demand::find_member_supports(resolved);
    CHECK(supports[0].stiffness.vertical_is_nominal);
    CHECK(supports[0].stiffness.torque_is_nominal);
    CHECK_FALSE(supports[2].stiffness.vertical_is_nominal);
}

TEST_CASE("framing that gives moves the guard's top by its forces' work over the push", "[closed-form]") {
    // One joist pair only bends: 4500 lb in each at 12 in beyond the beam, over 84 in of span. The top turns with the
    // joist there: rotation = M (L/3 + a)/E I for the couple M at the overhang a, plus shear and slip, so at least
    // that.
    const catalog::Resolved resolved = on_joists();
    const demand::Demand demand = couple_on(resolved);
    const double inertia = 1.5 * std::pow(9.25, 3) / 12.0, modulus = 1.4e6;
    const double turn = 4500.0 * (84.0 / 3.0 + 9.5) / (modulus * inertia);
    CHECK(demand.framing->states[0].top_in > turn * 9000.0 / 200.0);
}
