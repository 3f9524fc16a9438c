#pragma once
// What a change of the detail or another choice of the basis comes to.
#include "format/phrase.h"

#include <vector>

namespace toehold::review {
struct Assumption;
struct Comparison;
struct Remedy;
struct Review;
}  // namespace toehold::review

namespace toehold::wording {

/// `Then all checks pass. Nearest its limit: ...`
[[nodiscard]] format::Phrase remedy_outcome(const review::Remedy& remedy);
/// Why no remedy is given, for a review that has none.
[[nodiscard]] format::Phrase no_remedies(const review::Review& review);
/// What the other choice of an assumption gives; empty where there is none.
[[nodiscard]] format::Phrase other_choice(const review::Assumption& assumption);
/// Whether the verdict is the same on both sides.
[[nodiscard]] format::Phrase verdict_change(const review::Comparison& comparison);
/// The largest tension of each side, how many anchors each has, and whether both are on one basis.
[[nodiscard]] std::vector<format::Phrase> anchor_changes(const review::Comparison& comparison);

}  // namespace toehold::wording
