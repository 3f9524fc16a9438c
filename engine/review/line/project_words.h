#pragma once
// What was taken of loads on the posts of a project: what acts together, from which sides, over which lengths of rail.
#include "review/project_review.h"

#include <vector>

namespace toehold::review {

/// Of a review that has its posts, its lines and the framing they share.
[[nodiscard]] std::vector<format::Phrase> assumptions_of_project(const model::Project& project,
                                                                 const ProjectReview& review);

}  // namespace toehold::review
