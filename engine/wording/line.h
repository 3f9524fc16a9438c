#pragma once
// Lines of guard in words: what a post is in its line, where a push stood, what the rail comes to.
#include "format/phrase.h"
#include "model/line_geometry.h"

namespace toehold::review {
struct LineReview;
struct ProjectReview;
struct PushPlace;
}  // namespace toehold::review

namespace toehold::wording {

/// `line`, `corner`, `end`, `lone`.
[[nodiscard]] format::Phrase role(model::PostRole role);

/// `12 line posts, 2 corners, 2 ends`; empty: no post.
[[nodiscard]] format::Phrase role_counts(const std::vector<model::RoleCount>& counts);

/// `at post P3`, `at the middle of P2 to P3`, `14 in from P2 toward P3`; with the direction of the push in plan.
[[nodiscard]] format::Phrase push_place(const review::PushPlace& place);

/// `Guard line L1: continuous rail, sharing not counted`
[[nodiscard]] format::Phrase line_title(const review::LineReview& line);

/// How well its solve balances; empty where it was not solved.
[[nodiscard]] format::Phrase line_proof(const review::LineReview& line);

/// Why the line's verdict is what it is, one to three sentences; empty where it is adequate.
[[nodiscard]] format::Phrase line_reason(const review::LineReview& line);

/// Of the first line that makes the project's verdict; empty: posts alone make it, or it is adequate.
[[nodiscard]] format::Phrase line_reason(const review::ProjectReview& review);

}  // namespace toehold::wording
