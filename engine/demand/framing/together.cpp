#include "demand/framing/together.h"

#include "demand/in_proportion.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::demand {
namespace {

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

/// A load case by the case that was solved: itself, or the larger push that covers it, times a part of it.
struct Solved {
    std::size_t load_case = 0;
    double part = 1.0;
};

std::optional<Solved> solved(const Demand& demand, const std::string& id) {
    for (std::size_t index = 0; index < demand.cases.size(); ++index) {
        const LoadCase& load = demand.cases[index];
        if (load.id != id) continue;
        if (!load.covered_by) return Solved{index, 1.0};
        return Solved{*load.covered_by, load.push_lb / demand.cases.at(*load.covered_by).push_lb};
    }
    return std::nullopt;
}

void add_by_size(std::vector<MemberActions>& all, const std::vector<MemberActions>& more) {
    for (std::size_t member = 0; member < all.size(); ++member) {
        for (const auto action : actions_of_a_member) {
            double& value = all[member].*action;
            value = std::copysign(std::abs(value) + std::abs(more.at(member).*action), value);
        }
    }
}

/// Under a part of the push. The deck's own load does not shrink with it, and is added by size.
FramingState part_of(FramingState state, double part, const FramingDemand& framing) {
    if (part == 1.0) return state;
    grow(state, part);
    if (framing.deck && !state.with_deck.empty()) {
        state.with_deck = state.members;
        add_by_size(state.with_deck, framing.deck->members);
    }
    return state;
}

/// The other's framing under the load of that id, the same stiffness and nearly the same direction; absent where it has
/// no such load.
std::optional<FramingState> beside(const Demand& own, const State& state, const std::string& id, const Demand& other) {
    const std::optional<Solved> load = solved(other, id);
    if (!load) return std::nullopt;
    const std::size_t scenario = matching_scenario(other, own.scenarios[state.scenario]);
    const FramingState* nearest = nullptr;
    double least_rad = std::numeric_limits<double>::infinity();
    for (std::size_t index = 0; index < other.states.size(); ++index) {
        const State& candidate = other.states[index];
        const double apart = apart_rad(candidate.direction_rad, state.direction_rad);
        if (candidate.scenario != scenario || candidate.load_case != load->load_case || apart >= least_rad) continue;
        least_rad = apart;
        nearest = &other.framing->states[index];
    }
    if (nearest == nullptr) return std::nullopt;
    return part_of(*nearest, load->part, *other.framing);
}

std::vector<FramingState> all_beside(const Demand& own, const State& state, const std::string& id,
                                     const std::vector<const Demand*>& others) {
    std::vector<FramingState> found;
    for (const Demand* const other : others) {
        if (!other->framing || other->framing->states.empty()) continue;
        if (std::optional<FramingState> one = beside(own, state, id, *other)) found.push_back(std::move(*one));
    }
    return found;
}

/// What the other's guard load does along the members; the deck's own load is there once.
void add_along_members(FramingState& all, const FramingState& other) {
    add_by_size(all.members, other.members);
    if (!all.with_deck.empty()) add_by_size(all.with_deck, other.members);
}

/// Every post under the load.
FramingState on_all(FramingState all, const std::vector<FramingState>& others) {
    for (const FramingState& other : others) {
        add_along_members(all, other);
        for (std::size_t support = 0; support < all.reactions.size(); ++support) {
            for (const auto force : forces_of_a_reaction)
                all.reactions[support].*force += other.reactions.at(support).*force;
        }
    }
    return all;
}

/// This post under the load, and for each force those others that make it larger.
FramingState on_the_worst(FramingState all, const std::vector<FramingState>& others) {
    const FramingState own = all;
    for (const FramingState& other : others) {
        add_along_members(all, other);
        for (std::size_t support = 0; support < all.reactions.size(); ++support) {
            for (const auto force : forces_of_a_reaction) {
                const double more = other.reactions.at(support).*force;
                if (more * (own.reactions[support].*force) >= 0.0) all.reactions[support].*force += more;
            }
        }
    }
    return all;
}

/// The states in which the load of this number stands on the neighbors too.
void add_together(Demand& together, const Demand& own, std::size_t load_case,
                  const std::vector<const Demand*>& others) {
    const std::string& id = own.cases[load_case].id;
    const Solved load = solved(own, id).value();
    for (std::size_t index = 0; index < own.states.size(); ++index) {
        if (own.states[index].load_case != load.load_case) continue;
        const std::vector<FramingState> found = all_beside(own, own.states[index], id, others);
        if (found.empty()) continue;
        State state = grown(own.states[index], load.part);
        state.load_case = load_case;
        const FramingState alone = part_of(own.framing->states[index], load.part, *own.framing);
        for (const auto put_together : {on_all, on_the_worst}) {
            together.states.push_back(state);
            together.framing->states.push_back(put_together(alone, found));
        }
    }
}

}  // namespace

bool acts_on_all_posts(const LoadCase& load) { return load.id == "line" || load.id == "file-line"; }

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
    for (std::size_t load_case = 0; load_case < own.cases.size(); ++load_case) {
        if (acts_on_all_posts(own.cases[load_case])) add_together(together, own, load_case, others);
    }
    return together;
}

}  // namespace toehold::demand
