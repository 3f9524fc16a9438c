#pragma once
// The posts of a project that are not adequate, by what makes it so: one comment may speak of many posts.
#include "review/project_review.h"
#include "review/schedule/cause.h"

#include <vector>

namespace toehold::review {

/// Posts of one verdict and one first cause, whatever they stand on.
struct PostsOfCause {
    Verdict verdict = Verdict::incomplete;  ///< never adequate
    Cause cause;                            ///< of the worst
    std::size_t worst = 0;                  ///< place in ProjectReview::posts of the one with the largest ratio
    std::vector<std::size_t> posts;         ///< places, rising; never empty
    std::vector<std::string> marks;         ///< their ids, in the same order
};

/// Inadequate before incomplete; among these the cause of most posts first, then by its title.
[[nodiscard]] std::vector<PostsOfCause> posts_by_cause(const ProjectReview& review);

}  // namespace toehold::review
