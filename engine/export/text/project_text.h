#pragma once
// The review of a project for a terminal: a row for posts alike, what the posts share, and, on request, every post's
// review.
#include "export/text/review_text.h"
#include "review/project_review.h"

#include <string>

namespace toehold::exporting {

/// `full`: with every post's whole review behind the table.
[[nodiscard]] std::string project_text(const review::ProjectReview& review, const TextOptions& options, bool full);

}  // namespace toehold::exporting
