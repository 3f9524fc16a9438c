#pragma once
// The words every output uses for a verdict, a status, a severity and a result, so that paper, screen and text agree.
#include "checks/result.h"
#include "format/phrase.h"
#include "review/facts.h"

namespace toehold::wording {

[[nodiscard]] format::Phrase word(review::Verdict verdict);    ///< ADEQUATE, INADEQUATE, INCOMPLETE
[[nodiscard]] format::Phrase word(checks::Status status);      ///< PASS, FAIL, NO LOAD PATH, NOT SPECIFIED
[[nodiscard]] format::Phrase word(checks::Severity severity);  ///< FAIL, NOT SPECIFIED, CAUTION

/// `title, part`
[[nodiscard]] format::Phrase result(const format::Phrase& title, const model::PartId& part);
/// `demand/capacity 1.25`, `no load path`, `not specified`
[[nodiscard]] format::Phrase ratio(checks::Status status, double ratio);
/// `(worst of 4)` after something; nothing for one. With how many of them, itself included, come to the same:
/// `(worst of 8, 4 alike)`, `(4 alike)`.
[[nodiscard]] format::Phrase worst_of(format::Phrase words, std::size_t count, std::size_t alike = 1);

}  // namespace toehold::wording
