#include "demand/framing/member_forces.h"

#include "catalog/anchor_view.h"
#include "catalog/fastened.h"
#include "catalog/resolve_side.h"

#include <cmath>

namespace toehold::demand {
namespace {

using mechanics::MemberLoad;

/// A force on a member at a place in space, and how that place lies to the member's top.
struct SpaceForce {
    model::Place at;
    double x_lb = 0.0, y_lb = 0.0, up_lb = 0.0;
    double above_top_in = 0.0;
    /// A member along the rail moves as one piece where a post lies on its side: all that rolls it there does so at the
    /// post's axis.
    bool rolls_at_post = false;
};

/// Its upright part onto the member's axis; its level part along the member and across it, with the rolling and the
/// bending by its height over mid-depth. Boards fastened to a joist or a rim take what crosses it at its top, and roll
/// it by the height above or below them alone.
void add_force(StateLoads& loads, const Frame& frame, std::size_t member, const SpaceForce& force,
               bool held_by_boards) {
    const model::Member& shape = frame.members[member];
    loads.upright.push_back(load_at(frame, member, in_plan(force.at), force.up_lb));
    const double along_lb = along(shape, force.x_lb, force.y_lb);
    const double across_lb = across(shape, force.x_lb, force.y_lb);
    loads.lateral.push_back({member, along(shape, force.at.x_in, force.at.y_in), across_lb, along_lb});
    const double height_in = force.above_top_in + 0.5 * shape.depth_in;
    const bool at_boards = held_by_boards && shape.kind != model::MemberKind::block;
    const double rolling_lb_in = across_lb * (at_boards ? force.above_top_in : height_in);
    const double bending_lb_in = along_lb * height_in;
    // r x F with r = (0, 0, height): about x -height Fy, about y height Fx.
    const bool along_x = shape.along == model::PlanAxis::x;
    MemberLoad& bending = loads.upright.back();
    if (along_x) {
        bending.about_y_lb_in += bending_lb_in;
    } else {
        bending.about_x_lb_in -= bending_lb_in;
    }
    if (force.rolls_at_post && along_x) loads.upright.push_back(load_at(frame, member, {0.0, shape.across_in}, 0.0));
    MemberLoad& rolling = loads.upright.back();
    if (along_x) {
        rolling.about_x_lb_in -= rolling_lb_in;
    } else {
        rolling.about_y_lb_in += rolling_lb_in;
    }
}

/// A force along a member off its axis in plan turns it about the vertical.
void turn_about_vertical(StateLoads& loads, const Frame& frame, const SpaceForce& force) {
    LateralLoad& load = loads.lateral.back();
    const model::Member& shape = frame.members[load.member];
    const double off_axis_in = across(shape, force.at.x_in, force.at.y_in) - shape.across_in;
    // r x F with r across the member: about z -y Fx of a member along x, x Fy of one along y.
    load.turning_lb_in = (shape.along == model::PlanAxis::x ? -1.0 : 1.0) * off_axis_in * load.along_lb;
}

/// An upright anchor draws its member up, and puts its shear on it at the mount's bearing plane.
void add_upright_anchor(StateLoads& loads, const Frame& frame, const catalog::Anchor& anchor, const AnchorForce& force,
                        double layers_in, bool held_by_boards) {
    add_force(loads, frame, anchor.seat->member,
              {anchor.at, force.shear_x_lb, force.shear_y_lb, force.tension_lb, layers_in}, held_by_boards);
}

/// A level anchor draws the member it goes into towards its head, or the tie it hangs, and puts its shear on the one it
/// crosses.
void add_level_anchor(StateLoads& loads, const Frame& frame, const catalog::Anchor& anchor, const AnchorForce& force,
                      bool held_by_boards) {
    const std::size_t sheared = catalog::shear_seat(anchor).member;
    if (frame.holds_member(sheared)) {
        const SpaceForce across{anchor.at, force.shear_x_lb, 0.0, force.shear_y_lb, anchor.at.z_in, true};
        add_force(loads, frame, sheared, across, held_by_boards);
        turn_about_vertical(loads, frame, across);
    }
    if (!catalog::pulls_on_member(anchor) || !frame.holds_member(anchor.seat->member)) return;
    add_force(loads, frame, anchor.seat->member,
              {anchor.at, 0.0, -anchor.axis.y * force.tension_lb, 0.0, anchor.at.z_in, true}, held_by_boards);
}

bool on_a_face(const Support& support) { return support.presses.z == 0.0; }

void add_bearing(StateLoads& loads, const Frame& frame, const Support& support, const SupportForce& force,
                 bool held_by_boards) {
    if (!on_a_face(support)) {
        loads.upright.push_back(load_at(frame, support.member, force.at, -force.force_lb));
        return;
    }
    const SpaceForce pressed{{force.at.x_in, support.face_y_in, force.at.y_in},
                             0.0,
                             -support.presses.y * force.force_lb,
                             0.0,
                             force.at.y_in,
                             true};
    add_force(loads, frame, support.loaded_member(), pressed, held_by_boards);
}

/// What a tie draws on goes along the joist or block it is fastened to, or across it.
void add_ties(StateLoads& loads, const catalog::Resolved& resolved, const Frame& frame, const State& state,
              bool held_by_boards) {
    const auto* const side = std::get_if<model::SideFastened>(&resolved.detail.mount);
    if (side == nullptr) return;
    const catalog::SideJoint joint = catalog::side_joint(resolved.detail);
    for (std::size_t index = 0; index < side->ties.size() && index < state.ties_lb.size(); ++index) {
        const model::TensionTie& tie = side->ties[index];
        const std::optional<std::size_t> member = model::find_member(resolved.detail.framing, tie.into);
        if (!member || !frame.holds_member(*member)) continue;
        const SpaceForce drawn{{tie.x_in, joint.towards_y * joint.to_member_face_in, -tie.below_top_in},
                               0.0,
                               -joint.towards_y * state.ties_lb[index],
                               0.0,
                               -tie.below_top_in};
        add_force(loads, frame, *member, drawn, held_by_boards);
    }
}

/// Level force of a state on the member a post is fastened to, outward > 0, lb.
double outward_on_face_lb(const catalog::Resolved& resolved, const Demand& demand, const State& state,
                          std::size_t face) {
    double outward_lb = 0.0;
    for (std::size_t i = 0; i < resolved.anchors.size(); ++i) {
        const catalog::Anchor& anchor = resolved.anchors[i];
        if (anchor.seat && anchor.seat->member == face && catalog::pulls_on_member(anchor))
            outward_lb -= anchor.axis.y * state.anchors[i].tension_lb;
    }
    for (std::size_t i = 0; i < demand.supports.size(); ++i) {
        if (demand.supports[i].loaded_member() == face)
            outward_lb -= demand.supports[i].presses.y * state.supports[i].force_lb;
    }
    return outward_lb;
}

}  // namespace

bool boards_hold(const catalog::Resolved& resolved) {
    const model::Decking* const boards = model::deck_boards(resolved.detail);
    if (boards == nullptr || !boards->fastening) return false;
    const auto* const side = std::get_if<model::SideFastened>(&resolved.detail.mount);
    return side == nullptr || side->boards_brace_member;
}

bool boards_hold(const catalog::Resolved& resolved, const Demand& demand, const State& state) {
    if (!boards_hold(resolved)) return false;
    const std::optional<std::size_t> face = member_on_face(resolved);
    if (!face) return true;
    constexpr double rounding = 1.0001;
    return std::abs(outward_on_face_lb(resolved, demand, state, *face)) <=
           rounding * acting_load(demand, state).push_lb;
}

std::optional<std::size_t> member_on_face(const catalog::Resolved& resolved) {
    const auto* const side = std::get_if<model::SideFastened>(&resolved.detail.mount);
    return side == nullptr ? std::nullopt : model::find_member(resolved.detail.framing, side->member);
}

std::vector<double> layers_in(const catalog::Resolved& resolved) {
    std::vector<double> all;
    all.reserve(resolved.anchors.size());
    for (const catalog::Anchor& anchor : resolved.anchors)
        all.push_back(catalog::fastened_by(resolved, anchor).layers_in());
    return all;
}

StateLoads loads_of(const catalog::Resolved& resolved, const Demand& demand, const Frame& frame,
                    const std::vector<double>& layers_in, const State& state) {
    StateLoads loads;
    const bool held = boards_hold(resolved, demand, state);
    loads.held_by_boards = held;
    for (std::size_t index = 0; index < resolved.anchors.size(); ++index) {
        const catalog::Anchor& anchor = resolved.anchors[index];
        if (!anchor.seat) continue;
        if (catalog::lies_level(anchor)) {
            add_level_anchor(loads, frame, anchor, state.anchors[index], held);
        } else if (frame.holds_member(anchor.seat->member)) {
            add_upright_anchor(loads, frame, anchor, state.anchors[index], layers_in[index], held);
        }
    }
    for (std::size_t index = 0; index < demand.supports.size(); ++index) {
        const Support& support = demand.supports[index];
        const SupportForce& force = state.supports[index];
        if (support.kind != SupportKind::member || !frame.holds_member(support.loaded_member()) ||
            force.force_lb <= 0.0)
            continue;
        add_bearing(loads, frame, support, force, held);
    }
    add_ties(loads, resolved, frame, state, held);
    return loads;
}

}  // namespace toehold::demand
