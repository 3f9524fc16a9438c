#pragma once
// The pieces of framing that carry load, blocks, joists and rims alike, and what every check of one reads: its largest
// actions in each state of the demand, from the grillage.
#include "checks/registry.h"
#include "demand/governing_state.h"
#include "model/member.h"

#include <cstddef>
#include <string>
#include <vector>

namespace toehold::checks {

/// Numbers in `model::members` of those on which some state puts an action above 1e-6 lb or lb in, in order. None where
/// the demand has no state, or the framing cannot carry it at all.
[[nodiscard]] std::vector<std::size_t> loaded_members(const CheckInput& input);

/// Of a loaded member.
[[nodiscard]] const demand::MemberActions& actions_of(const CheckInput& input, std::size_t state, std::size_t member);

/// The state in which `quantity(const demand::MemberActions&)` is largest; the first of equal ones. For a loaded
/// member.
template <class Quantity>
[[nodiscard]] demand::GoverningState worst_actions(const CheckInput& input, std::size_t member, Quantity&& quantity) {
    demand::GoverningState worst{quantity(actions_of(input, 0, member)), 0};
    for (std::size_t state = 1; state < input.demand.states.size(); ++state) {
        const double value = quantity(actions_of(input, state, member));
        if (value > worst.value) worst = {value, state};
    }
    return worst;
}

/// The link a member's own strength stands for: from the member to what holds it.
[[nodiscard]] Link strength_link(const model::Member& member, format::Phrase by);

/// Part, link and the governing state's direction set.
[[nodiscard]] CheckResult member_result(const CheckInput& input, const model::Member& member, std::size_t state,
                                        format::Phrase by);

/// Where actions in the member's upright plane and its torque come from, for a step.
[[nodiscard]] const char* vertical_statics(const CheckInput& input);
/// Where horizontal actions across the member come from.
inline constexpr const char* lateral_statics = "simple beam, lateral";

// A doubled member is pieces side by side, nailed together, a stack is pieces one on another. Each is checked by itself
// with an equal share of everything the member carries: less than one solid piece would take. Pieces of a stack slip on
// each other, so they bend each about its own middle, nailed or not; that an anchor takes hold of the lowest of a loose
// stack is a check of its own (lifting.cpp). Of more than four side by side, as in solid infill, four are counted:
// nails do not carry a load across many joints (assumption).

/// How many pieces share what the member carries.
[[nodiscard]] int sharing_pieces(const model::Member& member);
/// What one of the pieces carries.
[[nodiscard]] demand::MemberActions share(const demand::MemberActions& actions, const model::Member& member);

/// How many pieces share; none for a single one.
[[nodiscard]] std::vector<Step> plies_steps(const model::Member& member);
/// The sentence that must be read with the result of a member of several pieces; empty for a single one.
[[nodiscard]] format::Phrase plies_note(const model::Member& member);

}  // namespace toehold::checks
