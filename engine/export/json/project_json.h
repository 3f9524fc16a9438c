#pragma once
// The review of a project as JSON, schema `toehold.project/1`: names are only ever added. Each post's review stands in
// it as a document of schema `toehold.review/1`.
#include "review/project_review.h"

#include <string>

namespace toehold::exporting {

[[nodiscard]] std::string project_json(const review::ProjectReview& review);

}  // namespace toehold::exporting
