#include "checks/member/actions.h"

#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::checks {
namespace {

using format::phrase;

bool acts(const demand::MemberActions& actions) {
    constexpr double nothing = 1e-6;
    return std::max({std::abs(actions.vertical_moment_lb_in), std::abs(actions.horizontal_moment_lb_in),
                     std::abs(actions.vertical_shear_lb), std::abs(actions.horizontal_shear_lb),
                     std::abs(actions.torque_lb_in)}) > nothing;
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
    const demand::FramingState& at = input.demand.framing.value().states.at(state);
    return at.with_deck.empty() ? at.members.at(member) : at.with_deck.at(member);
}

Link strength_link(const model::Member& member, format::Phrase by) {
    const model::PartId part = model::part_of(member);
    return link_between(part, {part.kind, part.id, model::PartPiece::supports}, std::move(by));
}

CheckResult member_result(const CheckInput& input, const model::Member& member, std::size_t state, format::Phrase by) {
    CheckResult result;
    result.part = model::part_of(member);
    if (acting_load(input.demand, input.demand.states.at(state)).push_lb > 0.0)  // not straight down or up
        result.direction_deg = degrees(input.demand.states.at(state).direction_rad);
    result.link = strength_link(member, std::move(by));
    return result;
}

const char* vertical_statics(const CheckInput& input) {
    return input.demand.framing.value().joists_described ? "grillage of blocks, joists and supports"
                                                         : "grillage of blocks between rigid joists";
}

int sharing_pieces(const model::Member& member) {
    constexpr int most_side_by_side = 4;
    return std::min(member.plies, most_side_by_side) * member.stack;
}

demand::MemberActions share(const demand::MemberActions& actions, const model::Member& member) {
    const double part = 1.0 / sharing_pieces(member);
    return {part * actions.vertical_moment_lb_in, part * actions.horizontal_moment_lb_in,
            part * actions.vertical_shear_lb, part * actions.horizontal_shear_lb, part * actions.torque_lb_in};
}

std::vector<Step> plies_steps(const model::Member& member) {
    if (sharing_pieces(member) == 1) return {};
    const format::Phrase meaning =
        member.stack > 1 ? phrase("pieces one on another and side by side, each with an equal share of the actions")
                         : phrase("pieces side by side, each with an equal share of the member's actions");
    return {given("n", meaning, static_cast<double>(sharing_pieces(member)), "", "assumption")};
}

format::Phrase plies_note(const model::Member& member) {
    const int pieces = sharing_pieces(member);
    if (pieces == 1) return {};
    if (member.stack > 1) {
        return phrase(
            "The {} pieces are taken to share the load equally, each bending by itself: a stack does not count as one "
            "deep piece. Their fastening to each other is not checked.",
            pieces);
    }
    if (member.plies > pieces) {
        return phrase(
            "Of the {} pieces {} are taken to share the load equally. Their nailing to each other is not checked.",
            member.plies, pieces);
    }
    return phrase("The {} pieces are taken to share the load equally. Their nailing to each other is not checked.",
                  member.plies);
}

}  // namespace toehold::checks
