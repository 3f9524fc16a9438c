#pragma once
// The posts of a project as a schedule: those alike on one row, with how many they are.
#include "review/project_review.h"
#include "review/schedule/cause.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::review {

/// Posts on the same mount that face the same way and come to the same: the same verdict and, where that is not
/// adequate, the same first cause. What is said of them is the worst of them.
struct ScheduleRow {
    std::vector<std::size_t> posts;  ///< places in ProjectReview::posts, rising; never empty
    std::vector<std::string> marks;  ///< their ids, in the same order
    std::string mount;
    model::PostFacing facing = model::PostFacing::plus_y;
    Verdict verdict = Verdict::incomplete;
    std::size_t worst = 0;  ///< place of the post whose cause has the largest ratio
    Cause cause;            ///< that post's
    /// Largest on any anchor of any of them; absent: no demand, or no anchor.
    std::optional<LargestTension> tension;
    std::string tension_post;  ///< id of the post with it
    /// Largest part of a push anywhere on the rail that reaches one of them; absent: no line of guard says.
    std::optional<double> share;
};

/// In the order of each row's first post.
[[nodiscard]] std::vector<ScheduleRow> post_schedule(const ProjectReview& review);

/// Largest part of a push on a rail that reaches the post, over the lines of guard it stands in; absent: none says.
[[nodiscard]] std::optional<double> share_of(const ProjectReview& review, const std::string& post);

}  // namespace toehold::review
