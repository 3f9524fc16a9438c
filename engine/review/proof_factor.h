#pragma once
// How far the code's concentrated load could grow before the first strength reaches its limit.
#include "review/facts.h"

#include <optional>
#include <vector>

namespace toehold::review {

/// Absent where a preload, an anchor without a load path or a check that nothing could satisfy leaves no answer, or
/// where no strength ever reaches its limit.
/// `results`: of the detail under its own loads.
[[nodiscard]] std::optional<ProofFactor> proof_factor(const catalog::Resolved& resolved, const demand::Demand& demand,
                                                      const std::vector<checks::CheckResult>& results);

}  // namespace toehold::review
