#pragma once
// What is said of a load test: its links, what is assumed, what to be careful with, and whether a built guard agrees.
#include "format/phrase.h"

#include <vector>

namespace toehold::resistance::ultimate {
enum class Link;
enum class Seen;
}  // namespace toehold::resistance::ultimate
namespace toehold::study {
struct CommonScatter;
struct Compared;
struct ComputedMovement;
struct LeftOutLink;
struct NoStrength;
struct Prediction;
struct ProofLoad;
struct TestedLink;
}  // namespace toehold::study

namespace toehold::wording {

/// `lag screw withdrawal`.
[[nodiscard]] format::Phrase link_name(resistance::ultimate::Link link);
/// `read`, `from memory`: how far a source was seen.
[[nodiscard]] format::Phrase seen_word(resistance::ultimate::Seen seen);
/// `wet in service`, `dry in service`.
[[nodiscard]] format::Phrase moisture_word(const study::Prediction& prediction);
/// Where a link's mean and its scatter come from.
[[nodiscard]] format::Phrase link_basis(const study::TestedLink& link);
/// Why a link is left out.
[[nodiscard]] format::Phrase left_out_because(const study::NoStrength& reason);
/// What several links have in common, and how far it scatters.
[[nodiscard]] format::Phrase common_scatter(const study::CommonScatter& scatter);

/// The chance to carry the test's push, with its interval, and the mean, as one sentence.
[[nodiscard]] format::Phrase predicted(const study::Prediction& prediction);
/// Where a link that is left out is used beyond its design value: that the chance is an upper bound. Empty: none is.
[[nodiscard]] format::Phrase upper_bound(const study::Prediction& prediction);
/// Which link breaks first and how often.
[[nodiscard]] format::Phrase breaks_first(const study::Prediction& prediction);
[[nodiscard]] std::vector<format::Phrase> proof_assumptions(const study::ProofLoad& proof);
[[nodiscard]] std::vector<format::Phrase> proof_cautions(const study::ProofLoad& proof);

/// Whether the guard as built agrees with the computed one, by how much not, and what stiffness it implies.
[[nodiscard]] std::vector<format::Phrase> compared(const study::ComputedMovement& computed,
                                                   const study::Compared& compared);
/// The published tests of 2005, each as a sentence, and what they do not tell of a base plate.
[[nodiscard]] std::vector<format::Phrase> published_tests();

}  // namespace toehold::wording
