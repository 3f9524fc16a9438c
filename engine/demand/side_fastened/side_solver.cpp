#include "demand/side_fastened/side_solver.h"

#include "catalog/resolve_side.h"
#include "demand/in_proportion.h"
#include "demand/side_fastened/backing.h"
#include "demand/side_fastened/side_assumptions.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::demand {
namespace {

using format::phrase;

constexpr double largest_residual = 1e-8;
constexpr double largest_elastic_residual = 1e-7;
// Beyond this the post has left the place it was computed in; about 20 degrees.
constexpr double largest_rotation_rad = 0.35;
// So many times as stiff a post bends no more than its fasteners' own digits.
constexpr double rigid_times = 1e4;

format::Phrase in_degrees(double direction_rad) {
    return phrase("{:.4g} degrees", direction_rad * 180.0 / std::numbers::pi);
}

/// What the post would do, in words.
format::Phrase motion_words(const mechanics::UnresistedMotion& motion) {
    const std::array<double, 6> parts = {std::abs(motion.moved.x),  std::abs(motion.moved.y),
                                         std::abs(motion.moved.z),  std::abs(motion.turned.x),
                                         std::abs(motion.turned.y), std::abs(motion.turned.z)};
    switch (std::max_element(parts.begin(), parts.end()) - parts.begin()) {
        case 0:
            return phrase("slides along the rail");
        case 1:
            return phrase("leaves the member");
        case 2:
            return phrase("slides down or up the member");
        case 3:
            return phrase("turns over, outward or inward");
        case 4:
            return phrase("turns over along the rail");
        default:
            return phrase("twists about its own axis");
    }
}

void check_solved(const mechanics::SidePostSolution& solution, const Push& push) {
    if (solution.status == mechanics::SolveStatus::solved) return;
    if (solution.status != mechanics::SolveStatus::no_equilibrium)
        throw NoDemand(phrase("the post found no place of balance at {}", in_degrees(push.direction_rad)));
    if (solution.unresisted) {
        throw Overturns(phrase("nothing specified can balance the push at {}: the post {}",
                               in_degrees(push.direction_rad), motion_words(*solution.unresisted)),
                        push.direction_rad);
    }
    throw Overturns(phrase("nothing specified can balance the push at {}: fasteners and contact leave the post free to "
                           "turn over",
                           in_degrees(push.direction_rad)),
                    push.direction_rad);
}

mechanics::PostSection times(mechanics::PostSection section, double factor) {
    for (double* stiffness : {&section.bending_x_lb_in2, &section.bending_y_lb_in2, &section.torsion_lb_in2,
                              &section.axial_lb, &section.shear_x_lb, &section.shear_y_lb})
        *stiffness *= factor;
    return section;
}

std::optional<std::size_t> body_of(const std::vector<std::size_t>& members, const mechanics::BackingBodies& bodies,
                                   const std::optional<std::size_t>& member) {
    if (bodies.places.empty() || !member) return std::nullopt;
    const auto found = std::find(members.begin(), members.end(), *member);
    if (found == members.end()) return std::nullopt;
    return static_cast<std::size_t>(found - members.begin());
}

std::vector<Support> supports_of(const catalog::Resolved& resolved, const SideContact& contact) {
    const auto index = model::find_member(resolved.detail.framing, on_side(resolved.detail).member);
    if (!index) return {};
    const catalog::SideJoint joint = catalog::side_joint(resolved.detail);
    std::vector<Support> supports;
    for (const ContactStretch& stretch : contact.stretches) {
        Support support;
        support.member = *index;
        support.part = model::part_of(model::member(resolved.detail.framing, *index));
        support.stiffness_psi_per_in = contact.stiffness.value;
        support.stiffness_source = contact.stiffness.source;
        const double half_in = 0.5 * contact.width_in;
        support.outline = {{-half_in, stretch.from_z_in},
                           {half_in, stretch.from_z_in},
                           {half_in, stretch.to_z_in},
                           {-half_in, stretch.to_z_in}};
        support.presses = {0.0, -joint.towards_y, 0.0};
        support.face_y_in = joint.towards_y * joint.to_member_face_in;
        support.carried_by = carried_by(resolved, contact);
        supports.push_back(std::move(support));
    }
    return supports;
}

/// Only where something happens along the post: fasteners, ties and the ends of contact.
bool is_wanted(double z_in, const catalog::Resolved& resolved, const SideContact& contact) {
    constexpr double one_place_in = 0.05;
    const auto near = [z_in](double place_in) { return std::abs(z_in - place_in) < one_place_in; };
    const model::SideFastened& mount = on_side(resolved.detail);
    return std::any_of(mount.places.begin(), mount.places.end(),
                       [&](const auto& place) { return near(-place.below_top_in); }) ||
           std::any_of(mount.ties.begin(), mount.ties.end(),
                       [&](const auto& tie) { return near(-tie.below_top_in); }) ||
           std::any_of(contact.stretches.begin(), contact.stretches.end(),
                       [&](const auto& stretch) { return near(stretch.from_z_in) || near(stretch.to_z_in); });
}

/// Top movement beyond that of a cantilever from z = 0, as a turn of the post's foot.
double foot_rotation_rad(const mechanics::PostMotion& foot, const Push& push, double turned) {
    // Outward motion at the top is -z times the turn about x, along the rail z times that about y.
    const double x = turned * (foot.moved_in.x / push.load.height_in + foot.turned_rad.y);
    const double y = turned * (foot.moved_in.y / push.load.height_in - foot.turned_rad.x);
    return x * std::cos(push.direction_rad) + y * std::sin(push.direction_rad);
}

}  // namespace

SideSolver::SideSolver(const catalog::Resolved& resolved, const Sampling& sampling, Kept* /*kept*/)
    : SideSolver(resolved, sampling.all_stiffnesses) {}

SideSolver::SideSolver(const catalog::Resolved& resolved, bool flexible_framing)
    : resolved_(resolved), contact_(side_contact(resolved)) {
    const catalog::SideJoint joint = catalog::side_joint(resolved.detail);
    turned_ = joint.towards_y < 0.0 ? 1.0 : -1.0;
    axis_y_in_ = joint.to_member_face_in;
    const auto& fixed = resolved.detail.basis.stiffness;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        anchor_stiffness_.push_back(
            fixed ? Stiffness{fixed->anchor_lb_per_in, phrase("fixed by the user: {}", fixed->reason)}
                  : anchor_stiffness(resolved, anchor));
        slip_.push_back(fastener_slip(resolved, anchor));
    }
    members_ = backing_members(resolved);
    if (flexible_framing) bodies_ = backing_bodies(resolved, members_);
    supports_ = supports_of(resolved, contact_);
}

mechanics::SidePost SideSolver::post_for(const StiffnessScenario& scenario, bool rigid) const {
    const model::SideFastened& mount = on_side(resolved_.detail);
    mechanics::SidePost post;
    post.axis_y_in = axis_y_in_;
    post.section = times(post_section(resolved_), rigid ? rigid_times : 1.0);
    if (scenario.flexible_framing) post.bodies = bodies_;
    const std::optional<std::size_t> member =
        supports_.empty() ? std::nullopt : std::optional(supports_.front().loaded_member());
    const double half_in = 0.5 * contact_.width_in;
    for (const ContactStretch& stretch : contact_.stretches) {
        mechanics::PostBearing bearing{-half_in, half_in, stretch.from_z_in, stretch.to_z_in,
                                       contact_.stiffness.value * scenario.bed};
        bearing.body = body_of(members_, post.bodies, member);
        post.bearings.push_back(bearing);
    }
    for (std::size_t i = 0; i < resolved_.anchors.size(); ++i) {
        const catalog::Anchor& anchor = resolved_.anchors[i];
        if (!anchor.seat) continue;  // it holds nothing; its place in the solution stays empty
        // Two springs at one place: its pull goes to the member of its seat or to its tie, its shear to what it
        // crosses.
        const double pulls_lb_per_in = anchor_stiffness_[i].value * scenario.anchors;
        mechanics::PostFastener pulled{turned_ * anchor.at.x_in, anchor.at.z_in,
                                       catalog::pulls_on_member(anchor) ? pulls_lb_per_in : 0.0};
        pulled.body = body_of(members_, post.bodies, anchor.seat->member);
        mechanics::PostFastener sheared{pulled.x_in, pulled.z_in};
        sheared.slip_x_lb_per_in = sheared.slip_z_lb_per_in = slip_[i].value;
        sheared.body = body_of(members_, post.bodies, catalog::shear_seat(anchor).member);
        post.fasteners.insert(post.fasteners.end(), {pulled, sheared});
    }
    for (std::size_t i = 0; i < mount.ties.size(); ++i) {
        const model::TensionTie& tie = mount.ties[i];
        const double bolt_lb_per_in = bolt_of_tie_lb_per_in(i);
        const double tie_alone = tie_lb_per_in(tie);
        mechanics::PostFastener fastener{
            turned_ * tie.x_in, -tie.below_top_in,
            bolt_lb_per_in > 0.0 ? 1.0 / (1.0 / tie_alone + 1.0 / (bolt_lb_per_in * scenario.anchors)) : tie_alone};
        fastener.body = body_of(members_, post.bodies, model::find_member(resolved_.detail.framing, tie.into));
        post.fasteners.push_back(fastener);
    }
    return post;
}

double SideSolver::bolt_of_tie_lb_per_in(std::size_t tie) const {
    for (std::size_t i = 0; i < resolved_.anchors.size(); ++i) {
        if (resolved_.anchors[i].tie == tie) return anchor_stiffness_[i].value;
    }
    return 0.0;
}

mechanics::SidePostSolution SideSolver::solve_post(const Push& push, bool rigid, double fineness) const {
    const mechanics::SpaceVector force{turned_ * push.load.push_lb * std::cos(push.direction_rad),
                                       turned_ * push.load.push_lb * std::sin(push.direction_rad), -push.load.down_lb};
    // The second, without a force, tells how the post's foot moves.
    const std::array<mechanics::PostLoad, 2> loads = {
        mechanics::PostLoad{{0.0, axis_y_in_, push.load.height_in}, force, {}},
        mechanics::PostLoad{{0.0, axis_y_in_, 0.0}, {}, {}}};
    const mechanics::SidePost post = post_for(push.scenario, rigid);
    if (post.fasteners.empty() && post.bearings.empty())
        throw Overturns(phrase("nothing holds the post: no fastener reaches its member"), push.direction_rad);
    mechanics::SidePostSolution solution = mechanics::solve_side_post(post, loads, fineness);
    check_solved(solution, push);
    return solution;
}

void SideSolver::record(const mechanics::SidePostSolution& solution, const Push& push) {
    const mechanics::Residuals& residuals = solution.residuals;
    const double worst = std::max({residuals.force, residuals.moment, residuals.complementarity});
    // Written so that a residual that is not a number is refused too.
    if (!(worst <= largest_residual) || !(solution.elastic_residual <= largest_elastic_residual)) {
        throw NoDemand(
            phrase("the solve at {} misses equilibrium: residual {:.3g}", in_degrees(push.direction_rad), worst));
    }
    proof_.force_residual = std::max(proof_.force_residual, residuals.force);
    proof_.moment_residual = std::max(proof_.moment_residual, residuals.moment);
    proof_.complementarity_residual = std::max(proof_.complementarity_residual, residuals.complementarity);
    ++proof_.solves;
}

State SideSolver::state_of(const mechanics::SidePostSolution& solution, const Push& push) const {
    State state;
    state.direction_rad = push.direction_rad;
    std::size_t held = 0;
    for (const catalog::Anchor& anchor : resolved_.anchors) {
        if (!anchor.seat) {
            state.anchors.emplace_back();
            continue;
        }
        const double tension_lb = solution.fasteners.at(held++).tension_lb;
        const mechanics::PostFastenerForce& across = solution.fasteners.at(held++);
        state.anchors.push_back({tension_lb, turned_ * across.slip_x_lb, across.slip_z_lb});
    }
    for (std::size_t tie = 0; tie < on_side(resolved_.detail).ties.size(); ++tie)
        state.ties_lb.push_back(solution.fasteners.at(held++).tension_lb);
    for (std::size_t i = 0; i < state.anchors.size(); ++i) {
        if (const auto& tie = resolved_.anchors[i].tie) state.anchors[i].tension_lb = state.ties_lb.at(*tie);
    }
    for (const mechanics::PostBearingForce& force : solution.bearings) {
        state.supports.push_back({force.force_lb,
                                  {turned_ * force.at_x_in, force.at_z_in},
                                  force.peak_psi,
                                  {turned_ * force.peak_x_in, force.peak_z_in},
                                  force.area_in2});
    }
    for (const mechanics::PostStation& station : solution.stations) {
        if (!is_wanted(station.z_in, resolved_, contact_)) continue;
        state.cuts.push_back({station.z_in, turned_ * station.moment_lb_in.x, turned_ * station.moment_lb_in.y,
                              station.moment_lb_in.z, turned_ * station.force_lb.y, turned_ * station.force_lb.x,
                              -station.force_lb.z});
    }
    state.rotation_rad = foot_rotation_rad(solution.at_loads.back(), push, turned_);
    return state;
}

SideSolver::Like SideSolver::like(const Push& push) {
    const StiffnessScenario& at = push.scenario;
    return {push.direction_rad, push.load.height_in, at.bed, at.anchors, at.flexible_framing ? 1.0 : 0.0};
}

/// Contact and fasteners work one way only, but from the first pound on: under pushes alone at one height everything
/// grows with the push.
State SideSolver::solve(const Push& push) {
    if (push.load.down_lb != 0.0 || !(push.load.push_lb > 0.0)) return solve_anew(push);
    const auto known = solved_.find(like(push));
    if (known == solved_.end()) {
        State state = solve_anew(push);
        solved_.insert({like(push), {push.load.push_lb, state}});
        return state;
    }
    State state = grown(known->second.second, push.load.push_lb / known->second.first);
    if (!(std::abs(state.rotation_rad) <= largest_rotation_rad))
        throw Overturns(phrase("the push at {} overturns the base: rotation exceeds {}", in_degrees(push.direction_rad),
                               in_degrees(largest_rotation_rad)),
                        push.direction_rad);
    return state;
}

State SideSolver::solve_anew(const Push& push) {
    const mechanics::SidePostSolution solution = solve_post(push, false, fineness_);
    record(solution, push);
    State state = state_of(solution, push);
    if (!(std::abs(state.rotation_rad) <= largest_rotation_rad))
        throw Overturns(phrase("the push at {} overturns the base: rotation exceeds {}", in_degrees(push.direction_rad),
                               in_degrees(largest_rotation_rad)),
                        push.direction_rad);
    if (!push.scenario.nominal()) return state;
    const State rigid = state_of(solve_post(push, true, fineness_), push);
    for (const AnchorForce& anchor : rigid.anchors) state.rigid_tension_lb.push_back(anchor.tension_lb);
    state.rigid_rotation_rad = rigid.rotation_rad;
    return state;
}

bool SideSolver::accurate(const Push& governing) {
    constexpr double allowed = 0.01;
    constexpr double finer = 2.0;
    const auto largest_lb = [&](double fineness) {
        double largest = 0.0;
        for (const auto& fastener : solve_post(governing, false, fineness).fasteners)
            largest = std::max(largest, fastener.tension_lb);
        return largest;
    };
    const double fine_lb = largest_lb(finer * fineness_);
    if (std::abs(largest_lb(fineness_) - fine_lb) <= allowed * fine_lb) return true;
    fineness_ *= finer;
    solved_.clear();
    return false;
}

void SideSolver::complete(Demand& demand, const Push& /*governing*/) {
    demand.side = side_facts(resolved_, contact_, slip_, demand);
    add_hand_couples(demand, resolved_);
    demand.assumptions = side_assumptions(resolved_, framing_can_flex());
    demand.proof = proof_;
}

}  // namespace toehold::demand
