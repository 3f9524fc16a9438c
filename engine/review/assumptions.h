#pragma once
// What was assumed where the file is silent, and what the other choice would give: found by running the checks again.
#include "review/review.h"

namespace toehold::review {

/// `results`: of the detail as it is, sorted worst first. `stop` is asked before each other choice is run.
[[nodiscard]] std::vector<Assumption> assumptions(const catalog::Resolved& resolved, const demand::Demand& demand,
                                                  const std::vector<checks::CheckResult>& results,
                                                  const Stop& stop = {});

/// Cautions an engineer would expect, in the order they are read.
[[nodiscard]] std::vector<format::Phrase> cautions();

}  // namespace toehold::review
