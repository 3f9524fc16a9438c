#pragma once
// A review, or one check's worked steps, as plain text of at most 100 columns, in the reader's language and units.
#include "format/phrase.h"
#include "review/review.h"

#include <string>
#include <string_view>
#include <vector>

namespace toehold::exporting {

struct TextOptions {
    format::Locale locale = {};
    bool all_rows = false;  ///< every result of every check, not only the worst part of each
};

[[nodiscard]] std::string review_text(const review::Review& review, const TextOptions& options);
/// Worked steps of every of these results that is of one check. `check` is an id; an unknown id gives an empty string.
[[nodiscard]] std::string explain_text(const std::vector<checks::CheckResult>& results, std::string_view check,
                                       const format::Locale& locale);

}  // namespace toehold::exporting
