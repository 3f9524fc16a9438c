#pragma once
// What was assumed where the file is silent, and what the other choice would give: found by running the checks again.
#include "review/review.h"

namespace toehold::review {

class CheckRuns;

/// Of a review that has a demand. `runs`: the checks on that demand; `stop` is asked before each other choice is run.
[[nodiscard]] std::vector<Assumption> assumptions(const Review& evaluated, CheckRuns& runs, const Stop& stop = {});

/// Cautions an engineer would expect, in the order they are read.
[[nodiscard]] std::vector<format::Phrase> cautions();

}  // namespace toehold::review
