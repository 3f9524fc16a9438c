#pragma once
// The example with joists that have lengths and supports, and demands that put given actions on one member.
#include "support/example.h"

#include <algorithm>
#include <vector>

namespace toehold::test {

/// Members: blocks B1, B2, joists J1 (2), J2 (3), rim R1 (4). Joists 1-1/2 x 9-1/4 in from y = -120 to 12, a ledger at
/// -120 and a beam at 0; the rim across their upper ends, from x = -20 to 20.
inline catalog::Resolved framed_example() {
    catalog::Resolved resolved = example_resolved();
    model::Framing& framing = resolved.detail.framing;
    framing.joists->from_in = -120.0;
    framing.joists->to_in = 12.0;
    const model::ReportedConnector hanger{"hanger", "test value", 800.0, 1500.0, 600.0, 1.5};
    framing.supports = {{"S1", model::JoistSupport::Kind::ledger, -120.0, 0.0, hanger},
                        {"S2", model::JoistSupport::Kind::beam, 0.0, 3.5, hanger}};
    model::Rim rim;
    rim.id = "R1";
    rim.at_in = 12.75;
    rim.from_in = -20.0;
    rim.to_in = 20.0;
    rim.width_in = 1.5;
    rim.depth_in = 9.25;
    rim.connection = hanger;
    framing.rims = {rim};
    resolved.rims = {*resolved.joists};
    return resolved;
}

/// One state for each of these actions on the member, nothing on any other.
inline demand::Demand with_actions(const catalog::Resolved& resolved, std::size_t member,
                                   const std::vector<demand::MemberActions>& actions,
                                   const demand::AnchorForce& on_each_anchor = {}) {
    demand::Demand demand = example_demand(resolved, on_each_anchor, {});
    demand.states.resize(actions.size(), demand.states.front());
    demand::FramingDemand framing;
    framing.joists_described = true;
    if (demand.framing) framing.supports = demand.framing->supports;
    for (const demand::MemberActions& each : actions) {
        demand::FramingState state;
        state.members.resize(model::members(resolved.detail.framing).size());
        state.members.at(member) = each;
        state.reactions.resize(framing.supports.size());
        framing.states.push_back(state);
    }
    demand.framing = framing;
    return demand;
}

/// Vertical and horizontal moment, vertical and horizontal shear, torque: by size, in this order.
inline demand::MemberActions actions(double vertical_moment, double horizontal_moment, double vertical_shear,
                                     double horizontal_shear, double torque) {
    return {vertical_moment, horizontal_moment, vertical_shear, horizontal_shear, torque};
}

}  // namespace toehold::test
