#pragma once
// The verdict and what governs, as sentences.
#include "format/phrase.h"

#include <vector>

namespace toehold::review {
struct Counts;
struct Facts;
struct Governing;
struct Review;
struct Side;
}  // namespace toehold::review

namespace toehold::wording {

/// Why the verdict is what it is, in one to three sentences: `40 checks fail. The first cause: ...`.
[[nodiscard]] format::Phrase verdict_reason(const review::Review& review);
[[nodiscard]] format::Phrase verdict_reason(const review::Side& side);

/// What makes the verdict, in a few words: the first cause and the gravest finding that forbids the detail; what is not
/// specified; or, where all passes, the strength nearest its limit. `Anchor withdrawal, anchor A`.
[[nodiscard]] format::Phrase cause(const review::Review& review);

/// The governing check in a few words: `Anchor withdrawal, anchor A: demand/capacity 5.51`. Empty: no check was made.
[[nodiscard]] format::Phrase governing(const review::Governing& governing);
/// More of it, to stand behind that: the link it is of, demand and capacity, the push's direction.
[[nodiscard]] std::vector<format::Phrase> governing_items(const review::Governing& governing);
/// `Capacity is short by 1,562 lb: it must be 5.51 times as large.` Empty where the governing check passes.
[[nodiscard]] format::Phrase shortfall(const review::Facts& facts);
/// Checks by status: `12 pass`, `40 fail` ...
[[nodiscard]] std::vector<format::Phrase> count_items(const review::Counts& counts);
/// Why there is no demand; empty where there is one.
[[nodiscard]] format::Phrase no_demand(const review::Review& review);
/// The largest tension on any anchor, beside what the hand calculation gives. Empty: none.
[[nodiscard]] format::Phrase largest_tension(const review::Review& review);
/// What framing flexibility does to it; empty where that is less than 5 %.
[[nodiscard]] format::Phrase framing_flexibility(const review::Facts& facts);

}  // namespace toehold::wording
