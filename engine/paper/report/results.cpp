#include "paper/report/results.h"

#include <algorithm>

namespace toehold::paper::report {

std::vector<CheckResults> results_by_check(const review::Review& review) {
    std::vector<CheckResults> all;
    for (const checks::CheckResult& result : review.checks) {
        const auto known = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.id == result.id; });
        if (known == all.end()) {
            all.push_back({result.id, {&result}});
        } else {
            known->results.push_back(&result);
        }
    }
    return all;
}

std::string worst_of(std::size_t count) { return count > 1 ? " (worst of " + std::to_string(count) + ")" : ""; }

Table results_table(const std::string& subject_head, const std::vector<CheckResults>& checks, units::System system) {
    Table table;
    table.columns = with_measure({{"check", 0.35}, {subject_head, 0.26}});
    for (const CheckResults& check : checks) {
        const checks::CheckResult& worst = check.worst();
        table.rows.push_back(with_measure(
            {{worst.title, false, check_name(check.id)}, words_cell(worst.subject + worst_of(check.results.size()))},
            measure(worst), system));
    }
    return table;
}

std::string link_to_check(const review::Review& review, const std::string& id) {
    const bool known = std::any_of(review.checks.begin(), review.checks.end(),
                                   [&id](const checks::CheckResult& result) { return result.id == id; });
    return known ? check_name(id) : std::string();
}

std::size_t count_of(const review::Review& review, checks::Status status) {
    return static_cast<std::size_t>(
        std::count_if(review.checks.begin(), review.checks.end(),
                      [status](const checks::CheckResult& result) { return result.status == status; }));
}

}  // namespace toehold::paper::report
