#include "demand/framing/find_framing.h"

#include "demand/framing/deck.h"
#include "demand/framing/frame.h"
#include "demand/framing/member_forces.h"
#include "demand/framing/member_supports.h"
#include "demand/mount.h"

#include <algorithm>
#include <cmath>

namespace toehold::demand {
namespace {

using mechanics::GridSolution;
using mechanics::MemberLoad;

/// `on_member`: what the support puts on the member's end.
SupportReaction reaction_of(const model::Member& held, const mechanics::GridLoad& on_member) {
    SupportReaction reaction;
    reaction.up_lb = -on_member.up_lb;
    const bool along_x = held.along == model::PlanAxis::x;
    reaction.torque_lb_in = -(along_x ? on_member.about_x_lb_in : on_member.about_y_lb_in);
    reaction.moment_lb_in = -(along_x ? on_member.about_y_lb_in : on_member.about_x_lb_in);
    return reaction;
}

/// Work of the loads over the push: the top's movement for the framing's give, by the unit-load theorem.
double top_movement_in(const Frame& frame, const GridSolution& solution, const std::vector<MemberLoad>& loads,
                       double push_lb) {
    if (!(push_lb > 0.0)) return 0.0;
    double work = 0.0;
    for (const MemberLoad& load : loads) {
        const mechanics::GridMotion motion = frame.grillage->motion_at(solution, load.member, load.at_in, loads);
        work += load.up_lb * motion.w_in + load.about_x_lb_in * motion.rx_rad + load.about_y_lb_in * motion.ry_rad;
    }
    return work / push_lb;
}

/// The deck lies flat on its joists: what acts across a member is the guard's alone.
void copy_lateral(FramingState& state) {
    for (std::size_t member = 0; member < state.with_deck.size(); ++member) {
        state.with_deck[member].horizontal_moment_lb_in = state.members[member].horizontal_moment_lb_in;
        state.with_deck[member].horizontal_shear_lb = state.members[member].horizontal_shear_lb;
    }
}

FramingState solve_state(const catalog::Resolved& resolved, const Demand& demand, const Frame& frame,
                         const std::optional<DeckOnJoists>& deck, const std::vector<double>& layers_in,
                         const State& state) {
    StateLoads loads = loads_of(resolved, demand, frame, layers_in, state);
    const GridSolution solution = frame.grillage->solve({}, loads.upright);
    FramingState result;
    result.residual = solution.residual;
    for (std::size_t member = 0; member < frame.members.size(); ++member)
        result.members.push_back(upright_actions(frame, solution, loads.upright, member));
    if (deck) {
        const DeckFactors factors = deck_factors(resolved.detail.basis, demand.cases[state.load_case]);
        result.with_deck = with_deck(frame, *deck, factors, solution, loads.upright, result.members);
    }
    for (std::size_t index = 0; index < frame.supports.size(); ++index) {
        const auto joint = frame.grid_joint_of[index], support = frame.grid_support_of[index];
        const mechanics::GridLoad& on_member = joint ? solution.joints[static_cast<std::size_t>(*joint)]
                                                     : solution.supports[static_cast<std::size_t>(support.value())];
        result.reactions.push_back(reaction_of(frame.members[frame.supports[index].member], on_member));
    }
    result.top_in = top_movement_in(frame, solution, loads.upright, acting_load(demand, state).push_lb);
    add_lateral(result, frame, std::move(loads.lateral), loads.held_by_boards, member_on_face(resolved));
    copy_lateral(result);
    return result;
}

bool carries_load(const catalog::Resolved& resolved, const Demand& demand, const Frame& frame) {
    const auto in_frame = [&](std::size_t member) { return frame.holds_member(member); };
    return std::any_of(resolved.anchors.begin(), resolved.anchors.end(),
                       [&](const auto& anchor) {
                           return anchor.seat &&
                                  (in_frame(anchor.seat->member) || in_frame(catalog::shear_seat(anchor).member));
                       }) ||
           std::any_of(demand.supports.begin(), demand.supports.end(), [&](const Support& support) {
               return support.kind == SupportKind::member && in_frame(support.member);
           });
}

std::vector<format::Phrase> framing_assumptions(const catalog::Resolved& resolved, const FramingDemand& framing) {
    using format::phrase;
    std::vector<format::Phrase> all;
    if (framing.joists_described) {
        all.push_back(
            phrase("Blocks, joists and rim are beams that bend, shear and twist. A block's end bears on the face of "
                   "the member it frames into, so its force twists that member unless the connection carries the "
                   "moment. Deck boards and dead weight are given no part in that."));
    } else {
        all.push_back(
            phrase("Joists do not move: their lengths and supports are not specified. They are not checked for the "
                   "guard's load with the deck's."));
    }
    if (boards_hold(resolved)) {
        all.push_back(
            phrase("Deck boards fastened to joists and rim take the horizontal push there. What is screwed to the top "
                   "of a joist is not computed beyond those fasteners."));
    }
    all.push_back(
        phrase("The slip of the connections at member ends is an estimate. It distributes the load and moves the "
               "framing; no capacity depends on it."));
    return all;
}

void add_deck_assumptions(std::vector<format::Phrase>& all, const DeckOnJoists& deck) {
    all.insert(all.end(), deck.load.assumptions.begin(), deck.load.assumptions.end());
    all.push_back(format::phrase(
        "Joists carry the deck's dead load of {} and live load of {} beside the guard's load, over half the bay on "
        "each side; outside the last joist the bay is taken as wide as the one inside. Uplift at their supports is met "
        "by the least dead load. Rims, blocks and what is below the supports are not checked for the deck's load.",
        format::Quantity{deck.load.dead_psf, "psf"}, format::Quantity{deck.load.live_psf, "psf"}));
}

}  // namespace

std::optional<FramingDemand> find_framing(const catalog::Resolved& resolved, const Demand& demand) {
    const Frame frame = make_frame(resolved);
    if (!carries_load(resolved, demand, frame)) return std::nullopt;
    FramingDemand framing;
    framing.supports = frame.supports;
    framing.joists_described = joists_described(resolved.detail.framing);
    framing.assumptions = framing_assumptions(resolved, framing);
    if (!frame.grillage->stable()) {
        framing.unstable = format::phrase(
            "a member of the framing can move without anything that resists it: see that every joist has two supports "
            "and every block two ends that are held");
        return framing;
    }
    if (blocks_hold_in_a_ring(frame)) {
        framing.unstable = format::phrase(
            "blocks end at each other in a ring, so that a sideways force has nowhere to go: let one of them end at a "
            "joist or a rim");
        return framing;
    }
    const std::optional<DeckOnJoists> deck = deck_on_joists(resolved, frame);
    if (deck) {
        framing.deck = actions_of_deck(frame, *deck, deck_factors(resolved.detail.basis, demand.cases.front()));
        add_deck_assumptions(framing.assumptions, *deck);
    }
    const std::vector<double> above_members_in = layers_in(resolved);
    framing.states.reserve(demand.states.size());
    for (const State& state : demand.states) {
        framing.states.push_back(solve_state(resolved, demand, frame, deck, above_members_in, state));
        framing.residual = std::max(framing.residual, framing.states.back().residual);
    }
    // A grid's balance is measured against its loads; stiff and soft springs side by side cost some digits.
    constexpr double largest_residual = 1e-7;
    if (!(framing.residual <= largest_residual))
        throw NoDemand(format::phrase("the framing's forces do not balance to the digits asked for"));
    return framing;
}

format::Phrase framing_lacks(const Demand& demand) {
    if (demand.framing && !demand.framing->unstable.empty())
        return format::phrase("Framing is not stable: nothing limits its movement.");
    if (!demand.framing || !demand.framing->joists_described)
        return format::phrase("Joist lengths and supports are not specified: joist flexibility is not included.");
    return {};
}

}  // namespace toehold::demand
