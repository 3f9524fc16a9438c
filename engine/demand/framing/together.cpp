#include "demand/framing/together.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::demand {
namespace {

constexpr std::array<double SupportReaction::*, 5> forces_of_a_reaction = {
    &SupportReaction::up_lb, &SupportReaction::across_lb, &SupportReaction::along_lb, &SupportReaction::torque_lb_in,
    &SupportReaction::moment_lb_in};

double apart_rad(double a, double b) { return std::abs(std::remainder(a - b, 2.0 * std::numbers::pi)); }

bool same_stiffness(const StiffnessScenario& a, const StiffnessScenario& b) {
    return a.bed_end == b.bed_end && a.anchor_end == b.anchor_end && a.flexible_framing == b.flexible_framing;
}

/// The other's stiffness that may stand beside this one. Where it has no such stiffness (its framing does not give, or
/// its user fixed it), its first stands for all.
std::size_t matching_scenario(const Demand& other, const StiffnessScenario& wanted) {
    const auto found = std::find_if(other.scenarios.begin(), other.scenarios.end(),
                                    [&](const StiffnessScenario& one) { return same_stiffness(one, wanted); });
    return found == other.scenarios.end() ? 0 : static_cast<std::size_t>(found - other.scenarios.begin());
}

/// The other's framing under the same load, stiffness and nearly the same direction; null where it has no such load.
const FramingState* beside(const Demand& own, const State& state, const Demand& other) {
    const std::size_t scenario = matching_scenario(other, own.scenarios[state.scenario]);
    const FramingState* nearest = nullptr;
    double least_rad = std::numeric_limits<double>::infinity();
    for (std::size_t index = 0; index < other.states.size(); ++index) {
        const State& candidate = other.states[index];
        const double apart = apart_rad(candidate.direction_rad, state.direction_rad);
        if (candidate.scenario != scenario || apart >= least_rad) continue;
        if (other.cases[candidate.load_case].id != own.cases[state.load_case].id) continue;
        least_rad = apart;
        nearest = &other.framing->states[index];
    }
    return nearest;
}

std::vector<const FramingState*> all_beside(const Demand& own, const State& state,
                                            const std::vector<const Demand*>& others) {
    std::vector<const FramingState*> found;
    for (const Demand* const other : others) {
        if (!other->framing || other->framing->states.empty()) continue;
        if (const FramingState* const one = beside(own, state, *other)) found.push_back(one);
    }
    return found;
}

void add_by_size(std::vector<MemberActions>& all, const std::vector<MemberActions>& more) {
    for (std::size_t member = 0; member < all.size(); ++member) {
        for (const auto action : actions_of_a_member) {
            double& value = all[member].*action;
            value = std::copysign(std::abs(value) + std::abs(more.at(member).*action), value);
        }
    }
}

/// Every post under the load.
FramingState on_all(FramingState all, const std::vector<const FramingState*>& others) {
    for (const FramingState* const other : others) {
        add_by_size(all.members, other->members);
        for (std::size_t support = 0; support < all.reactions.size(); ++support) {
            for (const auto force : forces_of_a_reaction)
                all.reactions[support].*force += other->reactions.at(support).*force;
        }
    }
    return all;
}

/// This post under the load, and for each force those others that make it larger.
FramingState on_the_worst(FramingState all, const std::vector<const FramingState*>& others) {
    const FramingState own = all;
    for (const FramingState* const other : others) {
        add_by_size(all.members, other->members);
        for (std::size_t support = 0; support < all.reactions.size(); ++support) {
            for (const auto force : forces_of_a_reaction) {
                const double more = other->reactions.at(support).*force;
                if (more * (own.reactions[support].*force) >= 0.0) all.reactions[support].*force += more;
            }
        }
    }
    return all;
}

}  // namespace

bool acts_on_all_posts(const LoadCase& load) { return load.id == "line"; }

std::vector<MemberActions> largest_actions(const Demand& demand) {
    std::vector<MemberActions> largest;
    if (!demand.framing || demand.framing->states.empty()) return largest;
    largest.resize(demand.framing->states.front().members.size());
    for (const FramingState& state : demand.framing->states) {
        for (std::size_t member = 0; member < largest.size(); ++member) {
            for (const auto action : actions_of_a_member)
                largest[member].*action = std::max(largest[member].*action, std::abs(state.members[member].*action));
        }
    }
    return largest;
}

Demand acting_together(const Demand& own, const std::vector<const Demand*>& others) {
    Demand together = own;
    if (!own.framing || own.framing->states.empty()) return together;
    for (std::size_t index = 0; index < own.states.size(); ++index) {
        const State& state = own.states[index];
        if (!acts_on_all_posts(own.cases[state.load_case])) continue;
        const std::vector<const FramingState*> found = all_beside(own, state, others);
        if (found.empty()) continue;
        for (const auto put_together : {on_all, on_the_worst}) {
            together.states.push_back(state);
            together.framing->states.push_back(put_together(own.framing->states[index], found));
        }
    }
    return together;
}

}  // namespace toehold::demand
