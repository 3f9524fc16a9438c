#pragma once
// From a solved line to what its review says.
#include "review/line/solve_line.h"

namespace toehold::review {

/// Without the lone posts' results, which the project's review adds. `all`: every line of the project, this one at
/// `number`.
[[nodiscard]] LineReview review_line(const model::Project& project, const std::vector<ResolvedPost>& posts,
                                     const std::vector<SolvedLine>& all, std::size_t number);

/// Every line of the project by itself: shares and rails, no post reviewed. `rails` as `review_project` has them.
[[nodiscard]] std::vector<LineReview> review_lines(const model::Project& project,
                                                   const std::vector<ResolvedPost>& posts,
                                                   const std::vector<ResolvedLine>& rails);

/// The checks of the rail and its connections; none without a rail.
[[nodiscard]] std::vector<checks::CheckResult> rail_checks(const SolvedLine& solved,
                                                           const std::vector<ResolvedPost>& posts);
/// The concentrated push on the line's rail without its load factor, lb.
[[nodiscard]] double rail_push_lb(const model::BaseDetail& detail);

/// Under so many pounds.
[[nodiscard]] checks::RailMovement moved(const demand::LineMovement& by_a_pound, double push_lb);

/// Of a line that was solved: what counting on the neighbors rests on.
[[nodiscard]] std::vector<format::Phrase> what_sharing_rests_on(const SolvedLine& solved, const model::Basis& basis);
/// What was taken for granted, and what is not counted. `detail`: of one of the line's posts.
[[nodiscard]] std::vector<format::Phrase> assumptions_of_line(const SolvedLine& solved, const LineReview& review,
                                                              const model::BaseDetail& detail);

}  // namespace toehold::review
