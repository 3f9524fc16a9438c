#pragma once
// The words every output uses for a verdict, a status and a severity, so that paper, screen and text agree.
#include "review/review.h"

#include <string_view>

namespace toehold::output {

[[nodiscard]] std::string_view word(review::Verdict verdict);    ///< ADEQUATE, INADEQUATE, INCOMPLETE
[[nodiscard]] std::string_view word(checks::Status status);      ///< holds, FAILS, NO PATH, EVIDENCE MISSING
[[nodiscard]] std::string_view word(checks::Severity severity);  ///< FAILS, MISSING, CAUTION

/// The names a program reads: lower case, underscores, never changed.
[[nodiscard]] std::string_view key(review::Verdict verdict);
[[nodiscard]] std::string_view key(checks::Status status);
[[nodiscard]] std::string_view key(checks::Severity severity);

}  // namespace toehold::output
