#include "demand/framing/together.h"

#include "demand/in_proportion.h"
#include "demand/loads/wind.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <string_view>

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

Solved solved(const Demand& demand, std::size_t index) {
    const LoadCase& load = demand.cases[index];
    if (!load.covered_by) return {index, 1.0};
    return {*load.covered_by, load.push_lb / demand.cases.at(*load.covered_by).push_lb};
}

/// The other's case of the same load. Of wind that blows along two axes, the case whose axis is nearest to this one, in
/// the other's own axes.
std::optional<Solved> same_load(const Demand& demand, const LoadCase& wanted, double axis_rad) {
    std::optional<std::size_t> nearest;
    const auto off_axis = [axis_rad](const LoadCase& load) {
        return std::abs(std::remainder(load.wind_axis_rad - axis_rad, std::numbers::pi));
    };
    for (std::size_t index = 0; index < demand.cases.size(); ++index) {
        if (whole_load(demand.cases[index]) != whole_load(wanted)) continue;
        if (!nearest || off_axis(demand.cases[index]) < off_axis(demand.cases[*nearest])) nearest = index;
    }
    return nearest ? std::optional<Solved>(solved(demand, *nearest)) : std::nullopt;
}

void add_by_size(std::vector<MemberActions>& all, const std::vector<MemberActions>& more, double part = 1.0) {
    for (std::size_t member = 0; member < all.size(); ++member) {
        for (const auto action : actions_of_a_member) {
            double& value = all[member].*action;
            value = std::copysign(std::abs(value) + part * std::abs(more.at(member).*action), value);
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

/// The other's state nearest to a direction, in the other's own axes.
const FramingState* nearest_state(const Demand& other, std::size_t scenario, std::size_t load_case,
                                  double direction_rad) {
    const FramingState* nearest = nullptr;
    double least_rad = std::numeric_limits<double>::infinity();
    for (std::size_t index = 0; index < other.states.size(); ++index) {
        const State& candidate = other.states[index];
        if (candidate.scenario != scenario || candidate.load_case != load_case) continue;
        const double apart = apart_rad(candidate.direction_rad, direction_rad);
        if (apart >= least_rad) continue;
        least_rad = apart;
        nearest = &other.framing->states[index];
    }
    return nearest;
}

/// The framing of one other post under the load, so many times as large as it was solved.
struct Beside {
    const Neighbor* neighbor = nullptr;
    const FramingState* same_way = nullptr;    ///< pushed the same way in plan
    const FramingState* as_it_sees = nullptr;  ///< pushed the same way as each post sees it; another where it is turned
    double part = 1.0;
};

std::optional<Beside> beside(const Demand& own, const State& state, const LoadCase& load, const Neighbor& neighbor) {
    const Demand& other = *neighbor.demand;
    const std::size_t scenario = matching_scenario(other, own.scenarios[state.scenario]);
    const auto turned = [&](double turn_rad, double& part) -> const FramingState* {
        const std::optional<Solved> same = same_load(other, load, load.wind_axis_rad - turn_rad);
        if (!same) return nullptr;
        part = same->part * neighbor.times;
        return nearest_state(other, scenario, same->load_case, state.direction_rad - turn_rad);
    };
    Beside one{&neighbor};
    double part_as_it_sees = 1.0;  // the same: a case that another covers has no wind, and so no other axis
    one.same_way = turned(neighbor.turn_rad, one.part);
    if (one.same_way == nullptr) return std::nullopt;
    one.as_it_sees = neighbor.turn_rad == 0.0 ? one.same_way : turned(0.0, part_as_it_sees);
    return one;
}

std::vector<Beside> all_beside(const Demand& own, const State& state, const LoadCase& load,
                               const std::vector<Neighbor>& others) {
    std::vector<Beside> found;
    for (const Neighbor& other : others) {
        if (!other.demand->framing || other.demand->framing->states.empty()) continue;
        if (const std::optional<Beside> one = beside(own, state, load, other)) found.push_back(*one);
    }
    return found;
}

/// What the others' guard loads do along the members; the deck's own load is there once.
void add_along_members(FramingState& all, const std::vector<MemberActions>& other, double part) {
    add_by_size(all.members, other, part);
    if (!all.with_deck.empty()) add_by_size(all.with_deck, other, part);
}

/// Every post under the load.
FramingState on_all(FramingState all, const std::vector<Beside>& others, const FramingState* Beside::*pushed) {
    for (const Beside& other : others) {
        const FramingState& state = *(other.*pushed);
        add_along_members(all, state.members, other.part);
        for (std::size_t support = 0; support < all.reactions.size(); ++support) {
            const SupportReaction more = reaction_at(*other.neighbor, state, support);
            for (const auto force : forces_of_a_reaction) all.reactions[support].*force += other.part * (more.*force);
        }
    }
    return all;
}

/// The larger of each action along each member.
std::vector<MemberActions> larger_actions(std::vector<MemberActions> larger, const std::vector<MemberActions>& other) {
    for (std::size_t member = 0; member < larger.size(); ++member) {
        for (const auto action : actions_of_a_member) {
            double& value = larger[member].*action;
            if (std::abs(other[member].*action) > std::abs(value)) value = other[member].*action;
        }
    }
    return larger;
}

/// What the others together can add to a force, up and down.
struct Adverse {
    double up = 0.0, down = 0.0;

    void may_add(double one, double two) {
        up += std::max({0.0, one, two});
        down += std::min({0.0, one, two});
    }
    /// To a force of the post's own; to none at all, whichever is more.
    [[nodiscard]] double to(double own) const {
        if (own == 0.0) return up >= -down ? up : down;
        return own > 0.0 ? up : down;
    }
};

/// This post under the load, and for each force those others that make it larger, pushed whichever way adds more.
FramingState on_the_worst(FramingState all, const std::vector<Beside>& others) {
    for (const Beside& other : others) {
        if (other.as_it_sees == other.same_way) {
            add_along_members(all, other.same_way->members, other.part);
        } else {
            add_along_members(all, larger_actions(other.same_way->members, other.as_it_sees->members), other.part);
        }
    }
    for (std::size_t support = 0; support < all.reactions.size(); ++support) {
        std::array<Adverse, forces_of_a_reaction.size()> sums;
        for (const Beside& other : others) {
            const SupportReaction one = reaction_at(*other.neighbor, *other.same_way, support);
            const SupportReaction two = reaction_at(*other.neighbor, *other.as_it_sees, support);
            for (std::size_t force = 0; force < sums.size(); ++force)
                sums[force].may_add(other.part * (one.*forces_of_a_reaction[force]),
                                    other.part * (two.*forces_of_a_reaction[force]));
        }
        for (std::size_t force = 0; force < sums.size(); ++force) {
            double& value = all.reactions[support].*forces_of_a_reaction[force];
            value += sums[force].to(value);
        }
    }
    return all;
}

/// The states in which the load of this number stands on the neighbors too.
void add_together(Demand& together, const Demand& own, std::size_t load_case, const std::vector<Neighbor>& others) {
    const Solved load = solved(own, load_case);
    for (std::size_t index = 0; index < own.states.size(); ++index) {
        if (own.states[index].load_case != load.load_case) continue;
        const std::vector<Beside> found = all_beside(own, own.states[index], own.cases[load_case], others);
        if (found.empty()) continue;
        State state = grown(own.states[index], load.part);
        state.load_case = load_case;
        const FramingState alone = part_of(own.framing->states[index], load.part, *own.framing);
        const auto add = [&](FramingState framing) {
            together.states.push_back(state);
            together.framing->states.push_back(std::move(framing));
        };
        add(on_all(alone, found, &Beside::same_way));
        add(on_the_worst(alone, found));
        const bool any_turned =
            std::any_of(found.begin(), found.end(), [](const Beside& one) { return one.as_it_sees != one.same_way; });
        if (any_turned) add(on_all(alone, found, &Beside::as_it_sees));
    }
}

}  // namespace

bool acts_on_all_posts(const LoadCase& load) {
    const std::string_view whole = whole_load(load);
    return whole == "line" || whole == "file-line" || whole == "wind" || whole == "wind-with-live";
}

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

bool may_be_shared(const LoadCase& load) {
    return load.id == "concentrated" || load.id.starts_with("file-concentrated");
}

Demand acting_together(const Demand& own, const std::vector<Neighbor>& others, const std::vector<Neighbor>& sharers) {
    Demand together = own;
    if (!own.framing || own.framing->states.empty()) return together;
    for (std::size_t load_case = 0; load_case < own.cases.size(); ++load_case) {
        if (acts_on_all_posts(own.cases[load_case])) add_together(together, own, load_case, others);
        if (!may_be_shared(own.cases[load_case])) continue;
        for (const Neighbor& one : sharers) add_together(together, own, load_case, {one});
    }
    return together;
}

}  // namespace toehold::demand
