#pragma once
// How stiffly a connection holds a member's end: springs, with where each number comes from. Estimates all: they share
// the load out and let the framing move; no capacity depends on them.
#include "demand/framing_demand.h"
#include "model/member.h"

namespace toehold::demand {

/// A value of 0: nothing described holds the end in that motion.
[[nodiscard]] SupportStiffness support_stiffness(const model::EndConnection& connection, const model::Member& member);

/// The same at a beam, where the joist's underside presses too. `across_modulus_psi`: of its wood across the grain.
[[nodiscard]] SupportStiffness beam_stiffness(const model::JoistSupport& support, const model::Member& joist,
                                              double across_modulus_psi);

}  // namespace toehold::demand
