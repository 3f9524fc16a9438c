#pragma once
// The texts of a project: its report and its comment letter. As every paper, pure functions of what was reviewed.
#include "paper/document.h"
#include "paper/issue.h"
#include "review/project_review.h"

#include <optional>
#include <vector>

namespace toehold::paper {

/// A project, reviewed whole.
struct ProjectSubject {
    const model::Project& project;
    const review::ProjectReview& review;
    /// Of each post, in the project's order: the detail as it is built there (project/near_post.h), by which its base
    /// is drawn and described; absent, or left out: as it was reviewed.
    std::vector<std::optional<catalog::Resolved>> built = {};
};

/// Schedule, guard lines with their rails' worked steps, then each mount once, by the post that governs it, with its
/// worked steps: 5 to 8 pages a mount.
[[nodiscard]] Document project_report(const ProjectSubject& subject, const Issue& issue);

/// What makes posts and rails not adequate, one comment a first cause, and the reviewer's remarks that the file keeps.
[[nodiscard]] Document project_letter(const ProjectSubject& subject, const Issue& issue);

}  // namespace toehold::paper
