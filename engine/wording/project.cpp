#include "wording/project.h"

#include "review/project_review.h"
#include "wording/verdict.h"

namespace toehold::wording {

using format::Phrase;
using format::phrase;

Phrase verdict_counts(const review::ProjectReview& review) {
    using review::Verdict;
    return phrase("{} posts: {} adequate, {} inadequate, {} incomplete.", review.posts.size(),
                  review::posts_with(review, Verdict::adequate), review::posts_with(review, Verdict::inadequate),
                  review::posts_with(review, Verdict::incomplete));
}

Phrase worst_reason(const review::ProjectReview& review, std::size_t worst, std::size_t posts) {
    const review::PostReview& one = review.posts[worst];
    const Phrase reason = verdict_reason(one.review);
    return posts > 1 ? phrase("Worst, {}: {}", one.post.id, reason) : reason;
}

Phrase schedule_legend() {
    return phrase(
        "D/C: demand over capacity of the first cause, or of what is nearest its limit. "
        "Tension: the largest on any anchor of these posts. Share: the largest part of a "
        "push on the rail that reaches one of them; 1.00 is the whole push.");
}

}  // namespace toehold::wording
