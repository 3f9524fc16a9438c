#pragma once
// The demand on the anchors and how it was found, as sentences.
#include "format/phrase.h"
#include "model/post.h"

#include <vector>

namespace toehold::demand {
struct Demand;
struct LoadCase;
struct Proof;
}  // namespace toehold::demand
namespace toehold::model {
struct BaseDetail;
struct Basis;
}  // namespace toehold::model
namespace toehold::review {
struct Review;
}

namespace toehold::wording {

/// What the columns of a table of anchors mean, of a review's mount.
[[nodiscard]] format::Phrase anchor_legend(const review::Review& review, const format::Locale& locale);
/// For each arm of the hand calculation that falls short by more than a tenth, the anchor on which it falls shortest.
[[nodiscard]] std::vector<format::Phrase> hand_shortfalls(const review::Review& review);
/// Couples by hand, prying, rotational stiffness, framing flexibility, bearing: of a review with a demand.
[[nodiscard]] std::vector<format::Phrase> base_behavior(const review::Review& review);

/// How far the code's load could grow; empty where that was not found.
[[nodiscard]] format::Phrase proof_factor(const review::Review& review);
[[nodiscard]] format::Phrase load_case(const demand::LoadCase& load, const model::BaseDetail& detail);
/// Combinations of stiffness solved; empty: none.
[[nodiscard]] std::vector<format::Phrase> stiffness_range(const demand::Demand& demand);
/// Residuals of the solves, and how near the largest tension is to a finer mesh's.
[[nodiscard]] std::vector<format::Phrase> accuracy(const demand::Proof& proof);

[[nodiscard]] format::Phrase post(const model::Post& post);
/// Method, its factor, building code.
[[nodiscard]] format::Phrase basis(const model::Basis& basis);

}  // namespace toehold::wording
