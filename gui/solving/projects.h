#pragma once
// Reviews of a project beside the window: posts are told of as each is reviewed, the whole at the end.
#include "catalog/catalog.h"
#include "format/phrase.h"
#include "model/problem.h"
#include "model/project.h"
#include "review/facts.h"
#include "review/schedule/cause.h"
#include "solving/errand.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace toehold::review {
struct ProjectReview;
struct Review;
}  // namespace toehold::review

namespace toehold::solving {

/// What a schedule shows of a post's review.
struct PostOutcome {
    std::string post;  ///< its mark
    review::Verdict verdict = review::Verdict::incomplete;
    review::Cause cause;                            ///< the first cause, or what is nearest its limit
    format::Phrase reason;                          ///< of the verdict, one to three sentences
    std::optional<review::LargestTension> tension;  ///< absent: no demand, or no anchor
};
[[nodiscard]] PostOutcome outcome_of(const std::string& post, const review::Review& review);

/// How far a project's review is, or what came of it.
struct ProjectNews {
    std::uint64_t number = 0;                             ///< as `begin` numbered it
    std::size_t forces = 0, checks = 0, posts = 0;        ///< posts whose forces are found, whose checks have run, all
    std::optional<PostOutcome> reviewed;                  ///< the post whose checks ran last
    std::shared_ptr<const review::ProjectReview> review;  ///< absent: it is still running, or cannot be made
    model::Problems problems;                             ///< why it cannot be made
    format::Phrase failure;                               ///< one sentence; empty: none
    [[nodiscard]] bool last() const { return review != nullptr || !problems.empty() || !failure.empty(); }
};

class Projects {
  public:
    /// `deliver` is called on the review's thread, never after the destructor has returned. The catalog outlives this.
    Projects(const catalog::Catalog& catalog, std::function<void(ProjectNews)> deliver);

    /// Never waits. A review that still runs is given up, and nothing more is heard of it.
    std::uint64_t begin(model::Project project);
    /// Never waits: what runs is given up.
    void stop();

  private:
    const catalog::Catalog& catalog_;
    std::function<void(ProjectNews)> deliver_;
    std::uint64_t last_ = 0;
    Errand errand_;  ///< last, so that what it uses outlives it
};

/// What `begin` has done on its thread: for tests. `tell` hears of each post and of the end.
void review_project(const model::Project& project, const catalog::Catalog& catalog, const Errand::Stop& stop,
                    const std::function<void(ProjectNews)>& tell);

}  // namespace toehold::solving
