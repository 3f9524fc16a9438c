#pragma once
// One place where a member of the example is held, with forces given outright: tests of what a connection takes need no
// grillage. Members of the example: 0, 1 blocks B1, B2 (3.5 x 5.5 in); 2, 3 joists J1, J2 (1.5 x 9.25 in); G 0.55.
#include "checks/run_check.h"

#include "support/example.h"

#include <string>

namespace toehold::test {

inline constexpr const char* end_check = "member-end-connection";

/// Block B1's lower end at joist J1.
inline demand::Hold block_hold(const model::EndConnection& connection) {
    demand::Hold hold;
    hold.member = 0;
    hold.holder = 2;
    hold.to = "joist J1";
    hold.connection = connection;
    return hold;
}

/// Joist J1 at a ledger or on a beam with 1.5 in of bearing, which is added to the detail.
inline demand::Hold support_hold(catalog::Resolved& resolved, model::JoistSupport::Kind kind,
                                 const model::EndConnection& connection) {
    const bool beam = kind == model::JoistSupport::Kind::beam;
    resolved.detail.framing.supports = {{"S1", kind, -90.0, beam ? 1.5 : 0.0, connection}};
    demand::Hold hold;
    hold.kind = demand::HoldKind::joist_support;
    hold.member = 2;
    hold.support = 0;
    hold.to = beam ? "beam S1" : "ledger S1";
    hold.connection = connection;
    return hold;
}

/// A demand whose framing is that one hold with those forces.
inline demand::Demand held(const catalog::Resolved& resolved, const demand::Hold& hold,
                           const demand::HoldForces& forces) {
    demand::Demand demand = example_demand(resolved, {}, {});
    demand.framing = demand::FramingDemand{};
    demand.framing->holds = {hold};
    demand.framing->states = {{{}, {forces}}};
    return demand;
}

inline std::vector<checks::CheckResult> run_held(const std::string& id, const catalog::Resolved& resolved,
                                                 const demand::Hold& hold, const demand::HoldForces& forces) {
    return run_check(id, resolved, held(resolved, hold, forces));
}

/// The one result of the connection's check.
inline checks::CheckResult end_result(const catalog::Resolved& resolved, const demand::Hold& hold,
                                      const demand::HoldForces& forces) {
    return run_held(end_check, resolved, hold, forces).at(0);
}

}  // namespace toehold::test
