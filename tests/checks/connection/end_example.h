#pragma once
// One place where a member of the example is held, with forces given outright: tests of what a connection takes need no
// grillage. Members of the example: 0, 1 blocks B1, B2 (3.5 x 5.5 in); 2, 3 joists J1, J2 (1.5 x 9.25 in); G 0.55.
#include "checks/run_check.h"

#include "support/example.h"

#include <string>

namespace toehold::test {

inline constexpr const char* end_check = "member-end-connection";

/// Block B1's lower end at joist J1.
inline demand::MemberSupport block_support(const model::EndConnection& connection) {
    demand::MemberSupport support;
    support.member = 0;
    support.holder = 2;
    support.holder_part = {model::PartKind::joist, "J1"};
    support.connection = connection;
    return support;
}

/// Joist J1 at a ledger or on a beam with 1.5 in of bearing, which is added to the detail.
inline demand::MemberSupport joist_support(catalog::Resolved& resolved, model::JoistSupport::Kind kind,
                                           const model::EndConnection& connection) {
    const bool beam = kind == model::JoistSupport::Kind::beam;
    resolved.detail.framing.supports = {{"S1", kind, -90.0, beam ? 1.5 : 0.0, connection}};
    demand::MemberSupport support;
    support.kind = demand::MemberSupportKind::joist_support;
    support.member = 2;
    support.joist_support = 0;
    support.holder_part = {beam ? model::PartKind::beam : model::PartKind::ledger, "S1"};
    support.connection = connection;
    return support;
}

/// A demand whose framing is that one support with those forces.
inline demand::Demand held(const catalog::Resolved& resolved, const demand::MemberSupport& support,
                           const demand::SupportReaction& forces) {
    demand::Demand demand = example_demand(resolved, {}, {});
    demand.framing = demand::FramingDemand{};
    demand.framing->supports = {support};
    demand::FramingState state;
    state.members.resize(model::members(resolved.detail.framing).size());
    state.reactions = {forces};
    demand.framing->states = {state};
    return demand;
}

inline std::vector<checks::CheckResult> run_held(const std::string& id, const catalog::Resolved& resolved,
                                                 const demand::MemberSupport& support,
                                                 const demand::SupportReaction& forces) {
    return run_check(id, resolved, held(resolved, support, forces));
}

/// The one result of the connection's check.
inline checks::CheckResult end_result(const catalog::Resolved& resolved, const demand::MemberSupport& support,
                                      const demand::SupportReaction& forces) {
    return run_held(end_check, resolved, support, forces).at(0);
}

}  // namespace toehold::test
