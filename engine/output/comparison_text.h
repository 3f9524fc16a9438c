#pragma once
// A comparison as plain text of at most 100 columns: whether the verdict turns, then input, anchors, checks, findings.
#include "output/text.h"
#include "review/comparison.h"

#include <string>

namespace toehold::output {

/// Without `all_rows` each check is shown by the subject that changes most, and what is the same on both sides counted.
[[nodiscard]] std::string comparison_text(const review::Comparison& comparison, const TextOptions& options);

}  // namespace toehold::output
