#pragma once
// From results and findings to the verdict, what governs and the facts.
#include "review/review.h"

namespace toehold::review {

/// A least distance or length that detailing asks for, not a strength: it often stands exactly at its limit.
[[nodiscard]] bool is_dimension(const checks::CheckResult& result);

/// no_path and failures by ratio, then missing evidence, then what holds by ratio; equal ones by id and the part's key.
void sort_worst_first(std::vector<checks::CheckResult>& results);
/// By severity, then by where they stand among causes, then by id and the part's key.
void sort_gravest_first(std::vector<checks::Finding>& findings);

/// Sets verdict, governing and facts from the review's sorted checks and findings and from its demand.
void conclude(Review& review);

}  // namespace toehold::review
