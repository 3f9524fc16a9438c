#pragma once
// A comparison as JSON, schema `toehold.comparison/1`: names are only ever added. Numbers in in, lb, psi, unrounded; an
// infinite ratio is null.
#include "review/comparison.h"

#include <string>

namespace toehold::exporting {

/// Without `all_rows` checks that are the same on both sides are left out; `same_checks` counts them either way.
[[nodiscard]] std::string comparison_json(const review::Comparison& comparison, bool all_rows);

}  // namespace toehold::exporting
