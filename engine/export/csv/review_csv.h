#pragma once
// Tables for a spreadsheet: RFC 4180 with CRLF at the end of every line, UTF-8 without a mark, one heading line.
// Numbers are in in, lb and psi, unrounded, with a point, and never quoted; an infinite ratio and what is not known are
// empty cells. Text that a spreadsheet would take for a formula (it begins with = + - @, a tab or a return) has an
// apostrophe before it.
#include <string>
#include <vector>

namespace toehold::review {
struct Review;
}

namespace toehold::exporting {

struct FiledReview {
    std::string file;  ///< as the user named it
    const review::Review* review = nullptr;
};

/// One row an anchor; none for a detail without a demand.
[[nodiscard]] std::string anchors_csv(const std::vector<FiledReview>& reviews);
/// One row a result, worst first within each detail.
[[nodiscard]] std::string checks_csv(const std::vector<FiledReview>& reviews);

// The same in pieces, for many reviews that are not held at once.
[[nodiscard]] std::string anchors_csv_heading();
[[nodiscard]] std::string anchors_csv_rows(const FiledReview& filed);
[[nodiscard]] std::string checks_csv_heading();
[[nodiscard]] std::string checks_csv_rows(const FiledReview& filed);

}  // namespace toehold::exporting
