#pragma once
// The schedule of posts for a spreadsheet, in the form of review_csv.h: one row a post, with the marks of those alike.
#include "review/project_review.h"

#include <string>

namespace toehold::exporting {

[[nodiscard]] std::string posts_csv_heading();
[[nodiscard]] std::string posts_csv_rows(const std::string& file, const review::ProjectReview& review);
/// A detail alone: a row of one post without a mark and a place.
[[nodiscard]] std::string posts_csv_row(const std::string& file, const review::Review& review);

}  // namespace toehold::exporting
