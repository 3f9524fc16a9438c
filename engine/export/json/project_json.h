#pragma once
// The review of a project as JSON, schema `toehold.project/1`: names are only ever added. Each post's review stands in
// it as a document of schema `toehold.review/1`; `schedule` has the posts that are alike on one row.
#include "review/project_review.h"

#include <string>
#include <string_view>

namespace toehold::exporting {

/// `file`: as the user named it; empty: the document names none.
[[nodiscard]] std::string project_json(const review::ProjectReview& review, std::string_view file = {});

}  // namespace toehold::exporting
