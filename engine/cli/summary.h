#pragma once
// Many reviews in one table: which hold, and the first cause of each verdict.
#include "review/review.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::cli {

/// What the table says of a review, so that the review itself need not be kept.
struct Headline {
    review::Verdict verdict = review::Verdict::incomplete;
    format::Phrase cause;
    std::optional<double> ratio;  ///< of the check that is the cause; absent where a finding alone is
    review::Counts counts;
};
[[nodiscard]] Headline headline(const review::Review& review);

struct SummaryRow {
    std::string file;
    std::optional<Headline> headline;  ///< absent: the file could not be used
    format::Phrase trouble;            ///< then why, in a few words
};

/// At most 100 columns. Its first line counts the verdicts.
[[nodiscard]] std::string summary_text(const std::vector<SummaryRow>& rows, const format::Locale& locale);

}  // namespace toehold::cli
