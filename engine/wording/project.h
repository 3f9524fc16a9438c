#pragma once
// A project's posts in words: how many hold, why the worst of some does not, what a schedule's columns mean.
#include "format/phrase.h"

#include <cstddef>

namespace toehold::review {
struct ProjectReview;
}

namespace toehold::wording {

/// `30 posts: 28 adequate, 2 inadequate, 0 incomplete.`
[[nodiscard]] format::Phrase verdict_counts(const review::ProjectReview& review);

/// Why the post at this place among the project's has its verdict; where it stands for several, which one it is:
/// `Worst, P3: 2 checks fail. ...`.
[[nodiscard]] format::Phrase worst_reason(const review::ProjectReview& review, std::size_t worst, std::size_t posts);

/// What D/C, tension and share of a schedule are.
[[nodiscard]] format::Phrase schedule_legend();

}  // namespace toehold::wording
