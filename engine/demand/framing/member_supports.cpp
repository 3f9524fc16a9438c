#include "demand/framing/member_supports.h"

#include "demand/framing/support_stiffness.h"
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
// Beside a post on a rim's side, stiff enough that rolling which nothing resists is shared as the rim's length to
// either joist shares it: as the forces across the rim are.
constexpr double nominal_beside_post_lb_in = 1e8;

MemberSupport block_end(const catalog::Resolved& resolved, const std::vector<Member>& members, std::size_t block,
                        bool upper) {
    const model::Block& shape = resolved.detail.framing.blocks[block];
    const model::BlockEnd& end = upper ? shape.to_end : shape.from_end;
    MemberSupport support;
    support.holder_part = {model::PartKind::joist, {}, model::PartPiece::not_described};
    support.member = block;
    support.upper = upper;
    support.holder = end.joist.empty() ? std::nullopt : model::find_member(resolved.detail.framing, end.joist);
    if (support.holder) support.holder_part = model::part_of(members[*support.holder]);
    support.connection = support.holder ? end.connection : model::EndConnection{};
    support.stiffness = support_stiffness(support.connection, members[block]);
    return support;
}

MemberSupport at_joist_support(const catalog::Resolved& resolved, const std::vector<Member>& members, std::size_t joist,
                               std::size_t joist_support) {
    const model::JoistSupport& shape = resolved.detail.framing.supports[joist_support];
    const bool beam = shape.kind == model::JoistSupport::Kind::beam;
    MemberSupport support;
    support.kind = MemberSupportKind::joist_support;
    support.member = joist;
    support.joist_support = joist_support;
    support.holder_part = {beam ? model::PartKind::beam : model::PartKind::ledger, shape.id};
    support.connection = shape.connection;
    support.stiffness = beam ? beam_stiffness(shape, members[joist],
                                              across_over_along * catalog::wood(resolved, joist).grade.modulus_psi)
                             : support_stiffness(shape.connection, members[joist]);
    return support;
}

MemberSupport at_rim(const std::vector<Member>& members, std::size_t joist, bool upper, std::size_t rim,
                     const model::Rim& shape) {
    MemberSupport support;
    support.kind = MemberSupportKind::joist_to_rim;
    support.member = joist;
    support.upper = upper;
    support.holder = rim;
    support.holder_part = model::part_of(members[rim]);
    support.connection = shape.connection;
    support.stiffness = support_stiffness(shape.connection, members[joist]);
    return support;
}

void add_joist_supports(std::vector<MemberSupport>& supports, const catalog::Resolved& resolved,
                        const std::vector<Member>& members) {
    const model::Framing& framing = resolved.detail.framing;
    for (std::size_t joist = 0; joist < members.size(); ++joist) {
        const Member& shape = members[joist];
        if (shape.kind != model::MemberKind::joist) continue;
        for (std::size_t index = 0; index < framing.supports.size(); ++index)
            supports.push_back(at_joist_support(resolved, members, joist, index));
        for (std::size_t rim = 0; rim < members.size(); ++rim) {
            if (members[rim].kind != model::MemberKind::rim) continue;
            for (const bool upper : {false, true}) {
                if (!model::meets(shape, upper ? shape.to_in : shape.from_in, upper, members[rim])) continue;
                supports.push_back(at_rim(members, joist, upper, rim, framing.rims[members[rim].index]));
            }
        }
    }
}

/// Gives the member a nominal support in a motion that none of its supports resists.
void keep_from_floating(std::vector<MemberSupport>& supports, std::size_t member, double SupportStiffness::*motion,
                        bool SupportStiffness::*nominal, double value, int needed) {
    const auto resists = [&](const MemberSupport& support) {
        return support.member == member && support.stiffness.*motion > 0.0;
    };
    if (std::count_if(supports.begin(), supports.end(), resists) >= needed) return;
    for (MemberSupport& support : supports) {
        if (support.member != member || support.stiffness.*motion > 0.0) continue;
        support.stiffness.*motion = value;
        support.stiffness.*nominal = true;
    }
}

/// Of the joists at a rim with a post on its side, the two next to the post: rolling that nothing resists arrives
/// there.
std::vector<std::size_t> next_to_post(const std::vector<MemberSupport>& supports, const std::vector<Member>& members,
                                      std::size_t rim) {
    std::optional<std::size_t> below, above;
    const auto place_in = [&](std::size_t support) { return members[supports[support].member].across_in; };
    for (std::size_t index = 0; index < supports.size(); ++index) {
        if (supports[index].kind != MemberSupportKind::joist_to_rim || supports[index].holder != rim) continue;
        if (place_in(index) <= 0.0 && (!below || place_in(index) > place_in(*below))) below = index;
        if (place_in(index) > 0.0 && (!above || place_in(index) < place_in(*above))) above = index;
    }
    std::vector<std::size_t> both;
    if (below) both.push_back(*below);
    if (above) both.push_back(*above);
    return both;
}

/// A rim turns about its length unless a joist's end keeps it square. `only`: supports that a nominal hold may be given
/// to; empty: all at the rim.
void keep_rim_from_rolling(std::vector<MemberSupport>& supports, std::size_t rim,
                           const std::vector<std::size_t>& only) {
    const auto keeps = [&](const MemberSupport& support) {
        return support.holder == rim && support.stiffness.moment_lb_in > 0.0;
    };
    if (std::any_of(supports.begin(), supports.end(), keeps)) return;
    for (std::size_t index = 0; index < supports.size(); ++index) {
        MemberSupport& support = supports[index];
        if (support.kind != MemberSupportKind::joist_to_rim || support.holder != rim) continue;
        if (!only.empty() && std::find(only.begin(), only.end(), index) == only.end()) continue;
        support.stiffness.moment_lb_in = only.empty() ? nominal_lb_in : nominal_beside_post_lb_in;
        support.stiffness.moment_is_nominal = true;
    }
}

/// Every joist's end must also carry the rim up and down.
void keep_rim_up(std::vector<MemberSupport>& supports) {
    for (MemberSupport& support : supports) {
        if (support.kind != MemberSupportKind::joist_to_rim || support.stiffness.vertical_lb_per_in > 0.0) continue;
        support.stiffness.vertical_lb_per_in = nominal_lb_per_in;
        support.stiffness.vertical_is_nominal = true;
    }
}

}  // namespace

bool joists_described(const model::Framing& framing) {
    return framing.joists && framing.joists->from_in && framing.joists->to_in && !framing.supports.empty();
}

std::vector<MemberSupport> find_member_supports(const catalog::Resolved& resolved) {
    const std::vector<Member> members = model::members(resolved.detail.framing);
    std::vector<MemberSupport> supports;
    for (std::size_t block = 0; block < resolved.detail.framing.blocks.size(); ++block) {
        supports.push_back(block_end(resolved, members, block, false));
        supports.push_back(block_end(resolved, members, block, true));
    }
    if (joists_described(resolved.detail.framing)) add_joist_supports(supports, resolved, members);
    keep_rim_up(supports);
    for (std::size_t member = 0; member < members.size(); ++member) {
        keep_from_floating(supports, member, &SupportStiffness::vertical_lb_per_in,
                           &SupportStiffness::vertical_is_nominal, nominal_lb_per_in, 2);
        keep_from_floating(supports, member, &SupportStiffness::torque_lb_in, &SupportStiffness::torque_is_nominal,
                           nominal_lb_in, 1);
        if (members[member].kind != model::MemberKind::rim) continue;
        const auto* const side = std::get_if<model::SideFastened>(&resolved.detail.mount);
        const bool on_face = side != nullptr && side->member == members[member].id;
        keep_rim_from_rolling(supports, member,
                              on_face ? next_to_post(supports, members, member) : std::vector<std::size_t>{});
    }
    return supports;
}

model::PartId supported_part(const MemberSupport& support, const model::PartId& member) {
    if (support.holder || support.joist_support) return model::held_at(member, support.holder_part);
    return {member.kind, member.id, support.upper ? model::PartPiece::upper_end : model::PartPiece::lower_end};
}

}  // namespace toehold::demand
