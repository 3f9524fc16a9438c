#pragma once
// A doubled member is pieces side by side, nailed together. Each is checked by itself with an equal share of everything
// the member carries: sideways and in torsion that is less than one solid piece would take.
#include "checks/result.h"
#include "demand/framing_demand.h"
#include "model/member.h"

#include <string>
#include <vector>

namespace toehold::checks {

/// What one of the pieces carries.
[[nodiscard]] demand::MemberActions share(const demand::MemberActions& actions, const model::Member& member);

/// How many pieces there are; none for a single one.
[[nodiscard]] std::vector<Step> plies_steps(const model::Member& member);
/// The sentence that must be read with a doubled member's result; empty for a single one.
[[nodiscard]] std::string plies_note(const model::Member& member);

}  // namespace toehold::checks
