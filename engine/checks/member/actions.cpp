#include "checks/member/actions.h"

#include "checks/basis/result_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::checks {
namespace {

bool acts(const demand::MemberActions& actions) {
    constexpr double nothing = 1e-6;
    return std::max({std::abs(actions.vertical_moment_lb_in), std::abs(actions.horizontal_moment_lb_in),
                     std::abs(actions.vertical_shear_lb), std::abs(actions.horizontal_shear_lb),
                     std::abs(actions.torque_lb_in)}) > nothing;
}

std::string holders(const model::Member& member) {
    switch (member.kind) {
        case model::MemberKind::block:
            return "ends of ";
        case model::MemberKind::joist:
            return "supports of ";
        case model::MemberKind::rim:
            break;
    }
    return "joists at ";
}

}  // namespace

std::vector<std::size_t> loaded_members(const CheckInput& input) {
    std::vector<std::size_t> loaded;
    if (!input.demand.framing) return loaded;
    const std::vector<demand::FramingState>& states = input.demand.framing->states;
    const std::size_t count = model::members(input.resolved.detail.framing).size();
    for (std::size_t member = 0; member < count; ++member) {
        const bool carries = std::any_of(states.begin(), states.end(), [member](const demand::FramingState& state) {
            return acts(state.members.at(member));
        });
        if (carries) loaded.push_back(member);
    }
    return loaded;
}

const demand::MemberActions& actions_of(const CheckInput& input, std::size_t state, std::size_t member) {
    return input.demand.framing.value().states.at(state).members.at(member);
}

Link strength_link(const model::Member& member, std::string by) {
    return {model::subject(member), holders(member) + model::subject(member), std::move(by)};
}

CheckResult member_result(const CheckInput& input, const model::Member& member, std::size_t state, std::string by) {
    CheckResult result;
    result.subject = model::subject(member);
    result.direction_deg = degrees(input.demand.states.at(state).direction_rad);
    result.link = strength_link(member, std::move(by));
    return result;
}

const char* vertical_statics(const CheckInput& input) {
    return input.demand.framing.value().joists_described ? "grillage of blocks, joists and supports"
                                                         : "grillage of blocks between joists that stand still";
}

demand::MemberActions share(const demand::MemberActions& actions, const model::Member& member) {
    const double part = 1.0 / member.plies;
    return {part * actions.vertical_moment_lb_in, part * actions.horizontal_moment_lb_in,
            part * actions.vertical_shear_lb, part * actions.horizontal_shear_lb, part * actions.torque_lb_in};
}

std::vector<Step> plies_steps(const model::Member& member) {
    if (member.plies == 1) return {};
    return {{"n", "pieces side by side, each with an equal share of the member's actions", "given",
             static_cast<double>(member.plies), "", "assumption"}};
}

std::string plies_note(const model::Member& member) {
    if (member.plies == 1) return {};
    return fmt::format(
        "The {} pieces are taken to share the load equally, which their nailing to each other must see "
        "to; that nailing is not checked.",
        member.plies);
}

}  // namespace toehold::checks
