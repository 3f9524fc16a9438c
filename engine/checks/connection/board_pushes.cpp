#include "checks/connection/board_pushes.h"

#include "catalog/anchor_view.h"
#include "demand/demand.h"
#include "demand/framing/member_forces.h"
#include "demand/framing_demand.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace toehold::checks {
namespace {

using model::Member;
using model::MemberKind;
using model::PlanAxis;

/// A horizontal force on a member, in plan.
struct PlanForce {
    std::size_t member = 0;
    model::Position at;
    double x_lb = 0.0, y_lb = 0.0;
};

void add_anchors(std::vector<PlanForce>& forces, const CheckInput& input, const std::vector<Member>& members,
                 const demand::State& state) {
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const catalog::Anchor& anchor = input.resolved.anchors[index];
        if (!anchor.seat) continue;
        const demand::AnchorForce& force = state.anchors.at(index);
        const bool level = catalog::lies_level(anchor);
        const std::size_t sheared = catalog::shear_seat(anchor).member;
        if (members[sheared].kind != MemberKind::block)
            forces.push_back({sheared, model::in_plan(anchor.at), force.shear_x_lb, level ? 0.0 : force.shear_y_lb});
        if (!level || !catalog::pulls_on_member(anchor) || members[anchor.seat->member].kind == MemberKind::block)
            continue;
        forces.push_back({anchor.seat->member, model::in_plan(anchor.at), 0.0, -anchor.axis.y * force.tension_lb});
    }
}

/// Of a post on a member's side: what it presses on, and where its ties go back to.
void add_face_and_ties(std::vector<PlanForce>& forces, const CheckInput& input, const std::vector<Member>& members,
                       const demand::State& state) {
    const auto* const mount = std::get_if<model::SideFastened>(&input.resolved.detail.mount);
    if (mount == nullptr) return;
    for (std::size_t index = 0; index < state.supports.size(); ++index) {
        const demand::Support& support = input.demand.supports.at(index);
        if (members[support.loaded_member()].kind == MemberKind::block) continue;
        const demand::SupportForce& force = state.supports[index];
        forces.push_back(
            {support.loaded_member(), {force.at.x_in, support.face_y_in}, 0.0, -support.presses.y * force.force_lb});
    }
    const double outward = mount->face == model::MemberFace::outside ? 1.0 : -1.0;
    for (std::size_t index = 0; index < mount->ties.size() && index < state.ties_lb.size(); ++index) {
        const auto into = model::find_member(input.resolved.detail.framing, mount->ties[index].into);
        if (!into || members[*into].kind == MemberKind::block) continue;
        forces.push_back({*into, {mount->ties[index].x_in, 0.0}, 0.0, outward * state.ties_lb[index]});
    }
}

/// One force a member, where the first of them acts.
std::vector<PlanForce> net_forces(const std::vector<PlanForce>& forces) {
    std::vector<PlanForce> net;
    for (const PlanForce& force : forces) {
        const auto known =
            std::find_if(net.begin(), net.end(), [&](const PlanForce& one) { return one.member == force.member; });
        if (known == net.end()) {
            net.push_back(force);
        } else {
            known->x_lb += force.x_lb;
            known->y_lb += force.y_lb;
        }
    }
    return net;
}

/// What the end of a block puts on a joist or a rim.
std::optional<PlanForce> of_block_end(const demand::MemberSupport& support, const demand::SupportReaction& reaction,
                                      const std::vector<Member>& members) {
    if (support.kind != demand::MemberSupportKind::block_end || !support.holder) return std::nullopt;
    if (members[*support.holder].kind == MemberKind::block) return std::nullopt;
    const Member& block = members[support.member];
    const double end_in = support.upper ? block.to_in : block.from_in;
    // Pressed (< 0) against an upper end pushes the holder toward plus.
    const double along_lb = support.upper ? -reaction.along_lb : reaction.along_lb;
    const bool along_x = block.along == PlanAxis::x;
    PlanForce force{*support.holder, {}, reaction.across_lb, along_lb};
    force.at = {block.across_in, end_in};
    if (along_x) {
        force.at = {end_in, block.across_in};
        std::swap(force.x_lb, force.y_lb);
    }
    return force;
}

/// On to the joists on either side of its place along the rim, by the lever rule; all to the nearest beyond the last.
void pass_on(std::vector<PlanForce>& forces, const PlanForce& on_rim, const std::vector<Member>& members) {
    const Member& rim = members[on_rim.member];
    const double at_in = model::coordinate_in(on_rim.at, rim.along);
    std::optional<std::size_t> below, above;
    for (std::size_t index = 0; index < members.size(); ++index) {
        const Member& joist = members[index];
        if (joist.kind != MemberKind::joist) continue;
        std::optional<std::size_t>& side = joist.across_in <= at_in ? below : above;
        if (!side || std::abs(joist.across_in - at_in) < std::abs(members[*side].across_in - at_in)) side = index;
    }
    if (!below && !above) return;
    const double to_above =
        !below   ? 1.0
        : !above ? 0.0
                 : (at_in - members[*below].across_in) / (members[*above].across_in - members[*below].across_in);
    const auto add = [&](const std::optional<std::size_t>& joist, double share) {
        if (joist && share > 0.0) forces.push_back({*joist, on_rim.at, share * on_rim.x_lb, share * on_rim.y_lb});
    };
    add(below, 1.0 - to_above);
    add(above, to_above);
}

std::vector<PlanForce> on_joists(const CheckInput& input, const std::vector<Member>& members, std::size_t state) {
    std::vector<PlanForce> arrive, forces;
    const demand::State& acting = input.demand.states.at(state);
    // Of a post on a member's side boards hold in some states only; of a plate the caller knows whether they are
    // fastened.
    const bool on_a_side = demand::member_on_face(input.resolved).has_value();
    if (on_a_side && !demand::boards_hold(input.resolved, input.demand, acting)) return forces;
    add_anchors(arrive, input, members, input.demand.states.at(state));
    add_face_and_ties(arrive, input, members, input.demand.states.at(state));
    const demand::FramingDemand& framing = input.demand.framing.value();
    for (std::size_t index = 0; index < framing.supports.size(); ++index) {
        const auto force = of_block_end(framing.supports[index], framing.states.at(state).reactions.at(index), members);
        if (force) arrive.push_back(*force);
    }
    for (const PlanForce& force : arrive) {
        if (members[force.member].kind == MemberKind::rim) {
            pass_on(forces, force, members);
        } else {
            forces.push_back(force);
        }
    }
    return kind(input.resolved.detail.mount) == model::MountKind::side_fastened ? net_forces(forces) : forces;
}

void add(BoardPush& push, const PlanForce& force, PlanAxis along) {
    const bool along_x = along == PlanAxis::x;
    const double at_in = model::coordinate_in(force.at, along);
    const double size_lb = std::hypot(force.x_lb, force.y_lb), before_lb = push.force_lb();
    if (!(size_lb > 0.0)) return;
    push.first_in = before_lb > 0.0 ? std::min(push.first_in, at_in) : at_in;
    push.last_in = before_lb > 0.0 ? std::max(push.last_in, at_in) : at_in;
    push.middle_in = (before_lb * push.middle_in + size_lb * at_in) / (before_lb + size_lb);
    push.along_lb += std::abs(along_x ? force.x_lb : force.y_lb);
    push.across_lb += std::abs(along_x ? force.y_lb : force.x_lb);
}

}  // namespace

double BoardPush::force_lb() const { return std::hypot(across_lb, along_lb); }

std::vector<BoardPush> board_pushes(const CheckInput& input, const std::vector<Member>& members, std::size_t state) {
    std::vector<BoardPush> pushes;
    for (const PlanForce& force : on_joists(input, members, state)) {
        auto push =
            std::find_if(pushes.begin(), pushes.end(), [&](const BoardPush& one) { return one.joist == force.member; });
        if (push == pushes.end()) push = pushes.insert(pushes.end(), BoardPush{force.member});
        add(*push, force, members[force.member].along);
    }
    return pushes;
}

}  // namespace toehold::checks
