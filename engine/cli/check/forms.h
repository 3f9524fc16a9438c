#pragma once
// What `check` prints: whole reviews as text, JSON or tables, or one summary of many files.
#include "cli/arguments.h"
#include "cli/check/summary.h"
#include "review/project_review.h"

#include <functional>
#include <string>

namespace toehold::cli {

/// What is printed of each review as soon as its turn comes, what at the end of all, and what is not worth computing.
struct Form {
    std::string before, between, after;  ///< around the texts of the reviews
    std::function<std::string(const std::string& file, const review::Review& review)> text;
    std::function<std::string(const std::string& file, const review::ProjectReview& review)> project_text;
    /// Of a file that cannot be used; absent: it is only complained of.
    std::function<std::string(const std::string& file, const model::Problems& problems)> unusable_text = nullptr;
    /// Of the files whose turn did not come before the work was stopped; absent: nothing.
    std::function<std::string(const std::vector<SummaryRow>& rows)> stopped_text = nullptr;
    /// Printed alone, at the end, instead of texts; absent: each review has its text.
    std::function<std::string(const std::vector<SummaryRow>& rows)> summary = nullptr;
    bool whole = true;  ///< with assumptions and remedies, each of which costs further reviews
};

/// `several`: more than one file was named, or a folder. Refers to the command.
[[nodiscard]] Form form_of(const CheckCommand& command, bool several, const format::Locale& locale);

inline constexpr std::string_view every_check = "all";  ///< of `--explain`

}  // namespace toehold::cli
