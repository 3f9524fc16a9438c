#pragma once
// What would mend a detail whose framing or anchorage does not hold: changes of the detail, each of them run through
// the whole review. Nothing is proposed that has not been run.
#include "catalog/catalog.h"
#include "review/review.h"

#include <vector>

namespace toehold::review {

/// Those that let the detail hold come first, then those that leave fewer results failing; none that does not help.
/// Empty for a detail that holds. The simplest changes are tried first, until two mend the detail. Every one takes a
/// review, so this costs up to ten of them; `stop` is asked before each, and leaves out the rest.
[[nodiscard]] std::vector<Remedy> find_remedies(const Review& review, const catalog::Catalog& catalog,
                                                const Stop& stop = {});

}  // namespace toehold::review
