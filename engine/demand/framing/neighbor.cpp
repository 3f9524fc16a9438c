#include "demand/framing/neighbor.h"

#include "model/placement.h"

#include <algorithm>
#include <stdexcept>

namespace toehold::demand {
namespace {

double sign_in_project(model::PlanAxis axis, model::PostFacing facing) {
    return model::turned(axis, facing).reversed ? -1.0 : 1.0;
}

/// Whether a direction along the axis means the same to both posts.
double relative_sign(model::PlanAxis axis, model::PostFacing own, model::PostFacing other) {
    return sign_in_project(axis, own) * sign_in_project(axis, other);
}

/// The same end of the same member at the same holder.
bool same_place(const MemberSupport& own, const MemberSupport& other, bool runs_the_other_way) {
    const bool has_ends = own.kind != MemberSupportKind::joist_support;
    return own.kind == other.kind && own.member == other.member && own.holder == other.holder &&
           own.joist_support == other.joist_support && (!has_ends || (own.upper == other.upper) != runs_the_other_way);
}

TurnedSupport turned_support(const std::vector<model::Member>& members, const MemberSupport& own,
                             model::PostFacing own_facing, const std::vector<MemberSupport>& others,
                             model::PostFacing other_facing) {
    const model::PlanAxis along = members.at(own.member).along;
    const double along_sign = relative_sign(along, own_facing, other_facing);
    const double across_sign = relative_sign(model::other(along), own_facing, other_facing);
    const auto found = std::find_if(others.begin(), others.end(),
                                    [&](const MemberSupport& one) { return same_place(own, one, along_sign < 0.0); });
    if (found == others.end()) throw std::logic_error("two posts of one project have different framing");
    // A couple about an axis turns the other way where the axis does: the torque's is the member's own axis, the
    // moment's the one across it.
    return {static_cast<std::size_t>(found - others.begin()), across_sign, along_sign, across_sign};
}

}  // namespace

Neighbor neighbor(const std::vector<model::Member>& members, const Demand& own, model::PostFacing own_facing,
                  const Demand& other, model::PostFacing other_facing) {
    Neighbor result{&other, 0.0, {}};
    if (own_facing == other_facing) return result;
    result.turn_rad = model::turn_rad(other_facing) - model::turn_rad(own_facing);
    if (!own.framing || !other.framing) return result;
    for (const MemberSupport& support : own.framing->supports)
        result.supports.push_back(turned_support(members, support, own_facing, other.framing->supports, other_facing));
    return result;
}

SupportReaction reaction_at(const Neighbor& neighbor, const FramingState& state, std::size_t support) {
    if (neighbor.supports.empty()) return state.reactions.at(support);
    const TurnedSupport& turned = neighbor.supports.at(support);
    SupportReaction reaction = state.reactions.at(turned.of_other);
    reaction.across_lb *= turned.across;
    reaction.torque_lb_in *= turned.torque;
    reaction.moment_lb_in *= turned.moment;
    return reaction;
}

}  // namespace toehold::demand
