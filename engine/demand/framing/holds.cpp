#include "demand/framing/holds.h"

#include "demand/framing/hold_stiffness.h"
#include "model/member.h"

#include <algorithm>
#include <cmath>

namespace toehold::demand {
namespace {

using model::Member;

constexpr double across_over_along = 0.05;  // as for the bed: E/20, common practice

// Where a motion of a loaded member is held by nothing at all, so that its force arrives where its check finds no
// capacity and says so, and the rest of the chain can still be followed.
constexpr double nominal_lb_per_in = 1e4;
constexpr double nominal_lb_in = 1e5;

Hold block_end(const catalog::Resolved& resolved, const std::vector<Member>& members, std::size_t block, bool upper) {
    const model::Block& shape = resolved.detail.framing.blocks[block];
    const model::BlockEnd& end = upper ? shape.to_end : shape.from_end;
    Hold hold;
    hold.member = block;
    hold.upper = upper;
    hold.holder = end.joist.empty() ? std::nullopt : model::find_member(resolved.detail.framing, end.joist);
    hold.to = hold.holder ? model::subject(members[*hold.holder]) : "joist not described";
    hold.connection = hold.holder ? end.connection : model::EndConnection{};
    hold.stiffness = hold_stiffness(hold.connection, members[block]);
    return hold;
}

Hold at_support(const catalog::Resolved& resolved, const std::vector<Member>& members, std::size_t joist,
                std::size_t support) {
    const model::JoistSupport& shape = resolved.detail.framing.supports[support];
    const bool beam = shape.kind == model::JoistSupport::Kind::beam;
    Hold hold;
    hold.kind = HoldKind::joist_support;
    hold.member = joist;
    hold.support = support;
    hold.to = (beam ? "beam " : "ledger ") + shape.id;
    hold.connection = shape.connection;
    hold.stiffness = beam ? beam_stiffness(shape, members[joist],
                                           across_over_along * catalog::wood(resolved, joist).grade.modulus_psi)
                          : hold_stiffness(shape.connection, members[joist]);
    return hold;
}

Hold at_rim(const std::vector<Member>& members, std::size_t joist, bool upper, std::size_t rim,
            const model::Rim& shape) {
    Hold hold;
    hold.kind = HoldKind::joist_to_rim;
    hold.member = joist;
    hold.upper = upper;
    hold.holder = rim;
    hold.to = model::subject(members[rim]);
    hold.connection = shape.connection;
    hold.stiffness = hold_stiffness(shape.connection, members[joist]);
    return hold;
}

void add_joist_holds(std::vector<Hold>& holds, const catalog::Resolved& resolved, const std::vector<Member>& members) {
    const model::Framing& framing = resolved.detail.framing;
    for (std::size_t joist = 0; joist < members.size(); ++joist) {
        const Member& shape = members[joist];
        if (shape.kind != model::MemberKind::joist) continue;
        for (std::size_t support = 0; support < framing.supports.size(); ++support)
            holds.push_back(at_support(resolved, members, joist, support));
        for (std::size_t rim = 0; rim < members.size(); ++rim) {
            if (members[rim].kind != model::MemberKind::rim) continue;
            for (const bool upper : {false, true}) {
                if (!model::meets(shape, upper ? shape.to_in : shape.from_in, upper, members[rim])) continue;
                holds.push_back(at_rim(members, joist, upper, rim, framing.rims[members[rim].index]));
            }
        }
    }
}

/// Gives the member a nominal hold in a motion that none of its holds resists.
void keep_from_floating(std::vector<Hold>& holds, std::size_t member, double HoldStiffness::*motion,
                        bool HoldStiffness::*nominal, double value, int needed) {
    const auto resists = [&](const Hold& hold) { return hold.member == member && hold.stiffness.*motion > 0.0; };
    if (std::count_if(holds.begin(), holds.end(), resists) >= needed) return;
    for (Hold& hold : holds) {
        if (hold.member != member || hold.stiffness.*motion > 0.0) continue;
        hold.stiffness.*motion = value;
        hold.stiffness.*nominal = true;
    }
}

/// A rim turns about its length unless a joist's end keeps it square.
void keep_rim_from_rolling(std::vector<Hold>& holds, std::size_t rim) {
    const auto keeps = [&](const Hold& hold) { return hold.holder == rim && hold.stiffness.turning_lb_in > 0.0; };
    if (std::any_of(holds.begin(), holds.end(), keeps)) return;
    for (Hold& hold : holds) {
        if (hold.kind != HoldKind::joist_to_rim || hold.holder != rim) continue;
        hold.stiffness.turning_lb_in = nominal_lb_in;
        hold.stiffness.turning_is_nominal = true;
    }
}

/// Every joist's end must also carry the rim up and down.
void keep_rim_up(std::vector<Hold>& holds) {
    for (Hold& hold : holds) {
        if (hold.kind != HoldKind::joist_to_rim || hold.stiffness.vertical_lb_per_in > 0.0) continue;
        hold.stiffness.vertical_lb_per_in = nominal_lb_per_in;
        hold.stiffness.vertical_is_nominal = true;
    }
}

}  // namespace

bool joists_described(const model::Framing& framing) {
    return framing.joists && framing.joists->from_in && framing.joists->to_in && !framing.supports.empty();
}

std::vector<Hold> find_holds(const catalog::Resolved& resolved) {
    const std::vector<Member> members = model::members(resolved.detail.framing);
    std::vector<Hold> holds;
    for (std::size_t block = 0; block < resolved.detail.framing.blocks.size(); ++block) {
        holds.push_back(block_end(resolved, members, block, false));
        holds.push_back(block_end(resolved, members, block, true));
    }
    if (joists_described(resolved.detail.framing)) add_joist_holds(holds, resolved, members);
    keep_rim_up(holds);
    for (std::size_t member = 0; member < members.size(); ++member) {
        keep_from_floating(holds, member, &HoldStiffness::vertical_lb_per_in, &HoldStiffness::vertical_is_nominal,
                           nominal_lb_per_in, 2);
        keep_from_floating(holds, member, &HoldStiffness::torque_lb_in, &HoldStiffness::torque_is_nominal,
                           nominal_lb_in, 1);
        if (members[member].kind == model::MemberKind::rim) keep_rim_from_rolling(holds, member);
    }
    return holds;
}

}  // namespace toehold::demand
