#pragma once
// The chain from the guard down: for each pair of neighbours, what joins them and the worst check that stands for it.
#include "review/review.h"

namespace toehold::review {

/// `results` sorted worst first.
[[nodiscard]] std::vector<PathLink> load_path(const std::vector<checks::CheckResult>& results);

}  // namespace toehold::review
