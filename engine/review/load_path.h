#pragma once
// The chain from the guard down to the supports of the joists: for each pair of neighbours, what joins them and the
// worst check that stands for it.
#include "review/review.h"

namespace toehold::review {

/// `results` sorted worst first. Only links that carry something, or that lack a path or evidence. A block, joist or
/// rim that something stands on and that nothing leads on from gets a link `to nothing described` without a path.
[[nodiscard]] std::vector<PathLink> load_path(const std::vector<checks::CheckResult>& results);

}  // namespace toehold::review
