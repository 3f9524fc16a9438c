#pragma once
// Many reviews in one table, sorted by what makes their verdicts, and what of it was not reviewed.
#include "model/problem.h"
#include "review/review.h"
#include "review/schedule/cause.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::cli {

/// What the table says of a review, so that the review itself need not be kept.
struct Headline {
    std::string detail;  ///< its name, or the project's
    review::Verdict verdict = review::Verdict::incomplete;
    review::Cause cause;          ///< what the row is sorted by
    format::Phrase words;         ///< the same in a few words, with what comes beside it
    std::optional<double> ratio;  ///< of the check that is the cause; absent where a finding alone is
    review::Counts counts;
};
[[nodiscard]] Headline headline(const review::Review& review);

struct SummaryRow {
    std::string file;
    std::optional<Headline> headline;  ///< absent: the file could not be used, or was not reviewed
    format::Phrase trouble;            ///< then why, in a few words
    bool begun = true;                 ///< false: the work was stopped before this file's turn came
};

/// Rows of one verdict and one first cause, in the order they came. Adequate details are one group.
struct CauseGroup {
    std::optional<review::Verdict> verdict;  ///< absent: files that could not be used
    format::Phrase cause;                    ///< title; empty: adequate, or not usable
    std::vector<const SummaryRow*> rows;
};
/// Inadequate, incomplete, not usable, adequate; among groups of one verdict the larger first, then by title. Rows not
/// begun are left out.
[[nodiscard]] std::vector<CauseGroup> by_first_cause(const std::vector<SummaryRow>& rows);

/// At most 100 columns. Its first line counts the verdicts.
[[nodiscard]] std::string summary_text(const std::vector<SummaryRow>& rows, const format::Locale& locale);
/// One row a file in the same order, those not begun last, in the form of export/csv/review_csv.h.
[[nodiscard]] std::string summary_csv(const std::vector<SummaryRow>& rows);

}  // namespace toehold::cli
