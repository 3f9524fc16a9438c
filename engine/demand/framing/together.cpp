#include "demand/framing/together.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>

namespace toehold::demand {
namespace {

double apart_rad(double a, double b) { return std::abs(std::remainder(a - b, 2.0 * std::numbers::pi)); }

bool same_stiffness(const StiffnessScenario& a, const StiffnessScenario& b) {
    return a.bed == b.bed && a.anchors == b.anchors && a.flexible_framing == b.flexible_framing;
}

/// Whether the other's state may stand beside one of this stiffness. Where the other has no such stiffness (its framing
/// does not give, or its user fixed it), its first stands for all.
bool beside(const Demand& other, const State& state, const StiffnessScenario& wanted) {
    const bool known = std::any_of(other.scenarios.begin(), other.scenarios.end(),
                                   [&](const StiffnessScenario& one) { return same_stiffness(one, wanted); });
    return known ? same_stiffness(other.scenarios[state.scenario], wanted) : state.scenario == 0;
}

std::optional<std::size_t> matching_state(const Demand& own, const State& state, const Demand& other) {
    std::optional<std::size_t> nearest;
    double least_rad = std::numeric_limits<double>::infinity();
    for (std::size_t index = 0; index < other.states.size(); ++index) {
        const State& candidate = other.states[index];
        if (other.cases[candidate.load_case].id != own.cases[state.load_case].id) continue;
        if (!beside(other, candidate, own.scenarios[state.scenario])) continue;
        const double apart = apart_rad(candidate.direction_rad, state.direction_rad);
        if (apart < least_rad) {
            least_rad = apart;
            nearest = index;
        }
    }
    return nearest;
}

void add(MemberActions& all, const MemberActions& more) {
    const auto grow = [](double& value, double by) { value = std::copysign(std::abs(value) + std::abs(by), value); };
    grow(all.vertical_moment_lb_in, more.vertical_moment_lb_in);
    grow(all.horizontal_moment_lb_in, more.horizontal_moment_lb_in);
    grow(all.vertical_shear_lb, more.vertical_shear_lb);
    grow(all.horizontal_shear_lb, more.horizontal_shear_lb);
    grow(all.torque_lb_in, more.torque_lb_in);
}

void add(SupportReaction& all, const SupportReaction& more) {
    all.up_lb += more.up_lb;
    all.across_lb += more.across_lb;
    all.along_lb += more.along_lb;
    all.torque_lb_in += more.torque_lb_in;
    all.moment_lb_in += more.moment_lb_in;
}

void add(FramingState& all, const FramingState& more) {
    for (std::size_t member = 0; member < all.members.size(); ++member)
        add(all.members[member], more.members.at(member));
    for (std::size_t support = 0; support < all.reactions.size(); ++support)
        add(all.reactions[support], more.reactions.at(support));
}

}  // namespace

bool acts_on_all_posts(const LoadCase& load) { return load.id == "line"; }

std::vector<MemberActions> largest_actions(const Demand& demand) {
    std::vector<MemberActions> largest;
    if (!demand.framing || demand.framing->states.empty()) return largest;
    largest.resize(demand.framing->states.front().members.size());
    const auto keep = [](double& value, double other) { value = std::max(value, std::abs(other)); };
    for (const FramingState& state : demand.framing->states) {
        for (std::size_t member = 0; member < largest.size(); ++member) {
            const MemberActions& actions = state.members[member];
            keep(largest[member].vertical_moment_lb_in, actions.vertical_moment_lb_in);
            keep(largest[member].horizontal_moment_lb_in, actions.horizontal_moment_lb_in);
            keep(largest[member].vertical_shear_lb, actions.vertical_shear_lb);
            keep(largest[member].horizontal_shear_lb, actions.horizontal_shear_lb);
            keep(largest[member].torque_lb_in, actions.torque_lb_in);
        }
    }
    return largest;
}

Demand acting_together(const Demand& own, const std::vector<const Demand*>& others) {
    Demand together = own;
    if (!together.framing || together.framing->states.empty()) return together;
    for (std::size_t index = 0; index < own.states.size(); ++index) {
        const State& state = own.states[index];
        if (!acts_on_all_posts(own.cases[state.load_case])) continue;
        for (const Demand* const other : others) {
            if (!other->framing || other->framing->states.empty()) continue;
            const std::optional<std::size_t> match = matching_state(own, state, *other);
            if (match) add(together.framing->states[index], other->framing->states[*match]);
        }
    }
    return together;
}

}  // namespace toehold::demand
