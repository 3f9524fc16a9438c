#pragma once
// Results of one check as one row of a table: the worst, and how many there are.
#include "paper/report/blocks.h"

#include <string>
#include <vector>

namespace toehold::paper::report {

/// Every result of one check, worst first, in the review's order.
struct CheckResults {
    std::string id;
    std::vector<const checks::CheckResult*> results;  ///< into the review; at least one
    [[nodiscard]] const checks::CheckResult& worst() const { return *results.front(); }
};
/// Checks in the order of their worst result.
[[nodiscard]] std::vector<CheckResults> results_by_check(const review::Review& review);

/// One row a check: its title, which leads to its worked steps, and its worst result.
[[nodiscard]] Table results_table(const std::string& part_head, const std::vector<CheckResults>& checks,
                                  const format::Locale& locale);

/// Name of the heading of a check's worked steps, to be linked to; empty where the review has no result of it.
[[nodiscard]] std::string link_to_check(const review::Review& review, const std::string& id);

}  // namespace toehold::paper::report
