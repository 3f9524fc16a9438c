#include "demand/framing/lateral.h"

#include <algorithm>
#include <cmath>

namespace toehold::demand {
namespace {

using model::Member;
using model::MemberKind;

/// Shares of a force at `at` between a beam's two supports on either side of it; a force beyond the last two levers
/// them.
struct Lever {
    std::size_t first = 0, second = 0;
    double to_second = 0.0;
};

Lever lever(const std::vector<double>& supports_in, double at_in) {
    std::size_t second = 1;
    while (second + 1 < supports_in.size() && supports_in[second] < at_in) ++second;
    const double length = supports_in[second] - supports_in[second - 1];
    return {second - 1, second, length > 0.0 ? (at_in - supports_in[second - 1]) / length : 0.0};
}

/// A force, and a couple that turns the bar.
struct PointForce {
    double at_in = 0.0;
    double force_lb = 0.0;
    double turning_lb_in = 0.0;
};

/// Largest moment and shear of a bar under forces in balance.
void add_extremes(MemberActions& actions, std::vector<PointForce> forces) {
    std::stable_sort(forces.begin(), forces.end(),
                     [](const PointForce& a, const PointForce& b) { return a.at_in < b.at_in; });
    double shear = 0.0, moment = 0.0, reached = forces.empty() ? 0.0 : forces.front().at_in;
    // What acts at one place acts there together: between its parts nothing of the bar lies.
    constexpr double same_place_in = 1e-6;
    for (std::size_t i = 0; i < forces.size(); ++i) {
        const PointForce& force = forces[i];
        moment += shear * (force.at_in - reached);
        const bool first_here = i == 0 || force.at_in > reached + same_place_in;
        reached = force.at_in;
        if (first_here) actions.horizontal_moment_lb_in = std::max(actions.horizontal_moment_lb_in, std::abs(moment));
        shear += force.force_lb;
        moment -= force.turning_lb_in;
        if (i + 1 < forces.size() && forces[i + 1].at_in <= reached + same_place_in) continue;
        actions.horizontal_moment_lb_in = std::max(actions.horizontal_moment_lb_in, std::abs(moment));
        actions.horizontal_shear_lb = std::max(actions.horizontal_shear_lb, std::abs(shear));
    }
}

/// The member's supports with their places along it, in order. `blocks_hold`: so do the blocks that end at it.
std::vector<std::pair<double, std::size_t>> supports_of(const Frame& frame, std::size_t member, bool blocks_hold) {
    std::vector<std::pair<double, std::size_t>> supports;
    for (std::size_t index = 0; index < frame.supports.size(); ++index) {
        const MemberSupport& support = frame.supports[index];
        const Member& held = frame.members[support.member];
        if (support.member == member) supports.emplace_back(frame.held_at_in[index], index);
        // A rim is held by the joists that end at it.
        if (support.kind == MemberSupportKind::joist_to_rim && support.holder == member)
            supports.emplace_back(held.across_in, index);
        if (blocks_hold && support.kind == MemberSupportKind::block_end && support.holder == member &&
            held.along != frame.members[member].along)
            supports.emplace_back(held.across_in, index);
    }
    std::sort(supports.begin(), supports.end());
    return supports;
}

/// The couple as one that turns the bar from its own axis towards what lies across it: counterclockwise from above of a
/// member along x, clockwise of one along y.
double turning_of(const LateralLoad& load, const Member& member) {
    return member.along == model::PlanAxis::x ? load.turning_lb_in : -load.turning_lb_in;
}

/// The pair of forces between two supports that takes a couple: at the second with its sign, at the first against it.
double turned_couple_lb(const LateralLoad& load, const Member& member, double first_in, double second_in) {
    const double apart_in = second_in - first_in;
    return apart_in > 0.0 ? turning_of(load, member) / apart_in : 0.0;
}

/// Across the member, to its supports; returns what each puts on.
std::vector<std::pair<std::size_t, double>> carry_across(FramingState& state, const Frame& frame, std::size_t member,
                                                         const std::vector<LateralLoad>& loads,
                                                         bool blocks_hold = false) {
    const auto supports = supports_of(frame, member, blocks_hold);
    std::vector<std::pair<std::size_t, double>> reactions;
    if (supports.size() < 2) return reactions;
    std::vector<double> places;
    for (const auto& support : supports) {
        places.push_back(support.first);
        reactions.emplace_back(support.second, 0.0);
    }
    std::vector<PointForce> forces;
    for (const LateralLoad& load : loads) {
        if (load.member != member) continue;
        const Lever shares = lever(places, load.at_in);
        reactions[shares.first].second += (1.0 - shares.to_second) * load.across_lb;
        reactions[shares.second].second += shares.to_second * load.across_lb;
        const double couple_lb =
            turned_couple_lb(load, frame.members[member], places[shares.first], places[shares.second]);
        reactions[shares.first].second -= couple_lb;
        reactions[shares.second].second += couple_lb;
        forces.push_back({load.at_in, load.across_lb, turning_of(load, frame.members[member])});
    }
    for (std::size_t i = 0; i < reactions.size(); ++i) forces.push_back({places[i], -reactions[i].second});
    add_extremes(state.members[member], std::move(forces));
    return reactions;
}

double along_of(const std::vector<LateralLoad>& loads, std::size_t member) {
    double sum = 0.0;
    for (const LateralLoad& load : loads) {
        if (load.member == member) sum += load.along_lb;
    }
    return sum;
}

/// A block's horizontal forces become its holders' loads.
void carry_block(FramingState& state, const Frame& frame, std::size_t block, std::vector<LateralLoad>& loads) {
    for (const auto& [support, force] : carry_across(state, frame, block, loads)) {
        state.reactions[support].across_lb += force;
        if (frame.supports[support].holder)
            loads.push_back({*frame.supports[support].holder, frame.members[block].across_in, 0.0, force});
    }
    const double pushed = along_of(loads, block);
    const bool to_upper = pushed > 0.0;
    for (std::size_t index = 0; index < frame.supports.size(); ++index) {
        const MemberSupport& support = frame.supports[index];
        if (support.member != block || support.upper != to_upper) continue;
        state.reactions[index].along_lb -= std::abs(pushed);
        if (support.holder) loads.push_back({*support.holder, frame.members[block].across_in, pushed, 0.0});
    }
}

/// Appends the block after every block that ends at it.
void append_after_held(std::size_t block, const Frame& frame, std::vector<bool>& seen,
                       std::vector<std::size_t>& order) {
    if (seen[block]) return;
    seen[block] = true;
    for (const MemberSupport& support : frame.supports) {
        if (support.kind == MemberSupportKind::block_end && support.holder == block)
            append_after_held(support.member, frame, seen, order);
    }
    order.push_back(block);
}

/// To a joist's supports, shared equally.
void carry_along_joist(FramingState& state, const Frame& frame, std::size_t member,
                       const std::vector<LateralLoad>& loads) {
    std::vector<std::size_t> supports;
    for (std::size_t index = 0; index < frame.supports.size(); ++index) {
        if (frame.supports[index].member == member && frame.supports[index].kind == MemberSupportKind::joist_support)
            supports.push_back(index);
    }
    const double pushed = along_of(loads, member);
    // Towards the far side of a support the joist is drawn off it, towards its near side pressed against it.
    for (const std::size_t index : supports) {
        const bool drawn = frame.held_at_in[index] < 0.5 * (frame.members[member].from_in + frame.members[member].to_in)
                               ? pushed > 0.0
                               : pushed < 0.0;
        const double share = std::abs(pushed) / static_cast<double>(supports.size());
        state.reactions[index].along_lb += drawn ? share : -share;
    }
}

/// A joist's or a rim's, where no boards hold it.
void carry_long_member(FramingState& state, const Frame& frame, std::size_t member, std::vector<LateralLoad>& loads) {
    const bool rim = frame.members[member].kind == MemberKind::rim;
    for (const auto& [support, force] : carry_across(state, frame, member, loads)) {
        // Across a rim is along the joists that hold it: outward draws it off an upper end.
        if (!rim) {
            state.reactions[support].across_lb += force;
            continue;
        }
        state.reactions[support].along_lb += frame.supports[support].upper ? force : -force;
        loads.push_back({frame.supports[support].member, frame.members[member].across_in, 0.0, force});
    }
    if (!rim) carry_along_joist(state, frame, member, loads);
}

/// A block that ends at a member draws it back or stems it, and passes that on to what its other end meets.
void carry_to_block(FramingState& state, const Frame& frame, std::size_t support, double force_lb,
                    std::vector<LateralLoad>& loads) {
    const std::size_t block = frame.supports[support].member;
    for (std::size_t index = 0; index < frame.supports.size(); ++index) {
        const MemberSupport& end = frame.supports[index];
        if (end.member != block || end.kind != MemberSupportKind::block_end) continue;
        state.reactions[index].along_lb += frame.supports[support].upper ? force_lb : -force_lb;
        if (index != support && end.holder)
            loads.push_back({*end.holder, frame.members[block].across_in, force_lb, 0.0});
    }
}

/// What an end that is pressed on its holder's face takes of a moment by contact alone: as far as the pressed part may
/// move from the middle towards an edge.
double kept_square_lb_in(const SupportReaction& reaction, const Member& held, const Member& holder) {
    const double pressed_lb = -reaction.along_lb;
    if (!(pressed_lb > 0.0)) return 0.0;
    const double height_in = pressed_lb / (contact_psi * held.width_in);
    return pressed_lb * std::max(0.0, 0.5 * (std::min(held.depth_in, holder.depth_in) - height_in));
}

/// The ends behind a member with a post on its side take together what contact can of the moments that keep it square:
/// the pressing force and its moment are one force at its own height, whichever end it goes to.
void keep_square_by_contact(FramingState& state, const Frame& frame, std::size_t member) {
    std::vector<std::size_t> ends;
    double kept_lb_in = 0.0, moment_lb_in = 0.0;
    for (std::size_t index = 0; index < frame.supports.size(); ++index) {
        const MemberSupport& support = frame.supports[index];
        const Member& held = frame.members[support.member];
        if (support.holder != member || held.along == frame.members[member].along) continue;
        ends.push_back(index);
        kept_lb_in += kept_square_lb_in(state.reactions[index], held, frame.members[member]);
        moment_lb_in += state.reactions[index].moment_lb_in;
    }
    if (moment_lb_in == 0.0) return;
    const double left = std::max(0.0, 1.0 - kept_lb_in / std::abs(moment_lb_in));
    for (const std::size_t index : ends) state.reactions[index].moment_lb_in *= left;
}

/// A rim or a joist with a post on its side.
void carry_member_on_face(FramingState& state, const Frame& frame, std::size_t member,
                          std::vector<LateralLoad>& loads) {
    if (frame.members[member].kind == MemberKind::block || !frame.holds_member(member)) return;
    for (const auto& [support, force] : carry_across(state, frame, member, loads, true)) {
        const MemberSupport& holding = frame.supports[support];
        if (holding.member == member) {
            state.reactions[support].across_lb += force;
        } else if (holding.kind == MemberSupportKind::block_end) {
            carry_to_block(state, frame, support, force, loads);
        } else {
            state.reactions[support].along_lb += holding.upper ? force : -force;
            loads.push_back({holding.member, frame.members[member].across_in, 0.0, force});
        }
    }
    keep_square_by_contact(state, frame, member);
    if (frame.members[member].kind == MemberKind::joist) carry_along_joist(state, frame, member, loads);
}

}  // namespace

std::vector<std::size_t> blocks_held_first(const Frame& frame) {
    std::vector<std::size_t> order;
    std::vector<bool> seen(frame.members.size(), false);
    for (std::size_t member = 0; member < frame.members.size(); ++member) {
        if (frame.members[member].kind == MemberKind::block) append_after_held(member, frame, seen, order);
    }
    return order;
}

bool blocks_hold_in_a_ring(const Frame& frame) {
    const std::vector<std::size_t> order = blocks_held_first(frame);
    std::vector<std::size_t> turn(frame.members.size(), 0);
    for (std::size_t i = 0; i < order.size(); ++i) turn[order[i]] = i;
    return std::any_of(frame.supports.begin(), frame.supports.end(), [&](const MemberSupport& support) {
        return support.kind == MemberSupportKind::block_end && support.holder &&
               frame.members[*support.holder].kind == MemberKind::block && turn[support.member] > turn[*support.holder];
    });
}

void add_lateral(FramingState& state, const Frame& frame, std::vector<LateralLoad> loads, bool boards_hold,
                 std::optional<std::size_t> on_face) {
    // First, so that the blocks and joists that hold it have all of its load before they pass it on.
    if (on_face && !boards_hold) carry_member_on_face(state, frame, *on_face, loads);
    for (const std::size_t block : blocks_held_first(frame)) carry_block(state, frame, block, loads);
    if (boards_hold) return;
    for (const MemberKind kind : {MemberKind::rim, MemberKind::joist}) {
        for (std::size_t member = 0; member < frame.members.size(); ++member) {
            if (member != on_face && frame.members[member].kind == kind && frame.holds_member(member))
                carry_long_member(state, frame, member, loads);
        }
    }
}

}  // namespace toehold::demand
