#pragma once
// A load test foretold, and a built guard beside the computed one, as pages of text.
#include "format/phrase.h"

#include <string>
#include <vector>

namespace toehold::study {
struct Compared;
struct ComputedMovement;
struct ProofLoad;
}  // namespace toehold::study

namespace toehold::exporting {

/// Chance and loads for both moistures, links, what is left out, assumptions and cautions.
[[nodiscard]] std::string proof_text(const study::ProofLoad& proof, const std::string& detail,
                                     const format::Locale& locale);
/// Each reading beside its computed range, and whether they agree.
[[nodiscard]] std::string measured_text(const study::ComputedMovement& computed, const study::Compared& compared,
                                        const format::Locale& locale);
/// A paragraph each, a blank line before.
[[nodiscard]] std::string sentences_text(const std::vector<format::Phrase>& sentences, const format::Locale& locale);

}  // namespace toehold::exporting
