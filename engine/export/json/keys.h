#pragma once
// The names a program reads for a verdict, a status and a severity: lower case, underscores, never changed.
#include "review/review.h"

#include <string_view>

namespace toehold::exporting {

[[nodiscard]] std::string_view key(review::Verdict verdict);
[[nodiscard]] std::string_view key(checks::Status status);
[[nodiscard]] std::string_view key(checks::Severity severity);

}  // namespace toehold::exporting
