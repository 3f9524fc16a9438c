#pragma once
// A comparison as plain text of at most 100 columns: whether the verdict turns, then input, anchors, checks, findings.
#include "export/text/review_text.h"
#include "review/comparison.h"

#include <string>
#include <utility>

namespace toehold::exporting {

/// Without `all_rows` each check is shown by the subject that changes most, and what is the same on both sides counted.
[[nodiscard]] std::string comparison_text(const review::Comparison& comparison, const TextOptions& options);

/// Both texts with every quantity in the reader's system and rounded as the reader would write it; as they stand where
/// that would make them look alike. `-` stands for what is not there.
[[nodiscard]] std::pair<std::string, std::string> shown_values(const std::string& first, const std::string& second,
                                                               units::System system);

}  // namespace toehold::exporting
