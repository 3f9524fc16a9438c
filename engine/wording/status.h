#pragma once
// The words every output uses for a verdict, a status and a severity, so that paper, screen and text agree.
#include "review/review.h"

#include <string_view>

namespace toehold::wording {

[[nodiscard]] std::string_view word(review::Verdict verdict);    ///< ADEQUATE, INADEQUATE, INCOMPLETE
[[nodiscard]] std::string_view word(checks::Status status);      ///< holds, FAILS, NO PATH, EVIDENCE MISSING
[[nodiscard]] std::string_view word(checks::Severity severity);  ///< FAILS, MISSING, CAUTION

}  // namespace toehold::wording
