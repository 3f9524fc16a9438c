#pragma once
// Marks of posts in few words: `P1 to P12, P14`.
#include <string>
#include <vector>

namespace toehold::review {

/// Marks that count up by one, first to last; both the same: one mark.
struct MarkRun {
    std::string first, last;
    std::size_t count = 1;
    friend bool operator==(const MarkRun&, const MarkRun&) = default;
};

/// Three or more marks of one beginning whose numbers follow each other become one run; the order is by beginning,
/// then by number. A mark that ends in no number, or in one written with leading zeros, stands alone.
[[nodiscard]] std::vector<MarkRun> mark_runs(const std::vector<std::string>& marks);

/// The runs with these words between the ends of a run and between runs: `P1 to P12, P14`, `P1-P12,P14`.
[[nodiscard]] std::string joined_marks(const std::vector<std::string>& marks, const std::string& to,
                                       const std::string& between = ", ");

}  // namespace toehold::review
