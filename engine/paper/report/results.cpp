#include "paper/report/results.h"

#include "review/groups.h"
#include "review/review.h"
#include "wording/status.h"

#include <algorithm>

namespace toehold::paper::report {
namespace {

/// Results of the check that come to the same as its worst.
std::size_t alike(const CheckResults& check) {
    return static_cast<std::size_t>(
        std::count_if(check.results.begin(), check.results.end(),
                      [&check](const checks::CheckResult* one) { return review::alike(check.worst(), *one); }));
}

}  // namespace

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

Table results_table(const std::string& part_head, const std::vector<CheckResults>& checks,
                    const format::Locale& locale) {
    Table table;
    table.columns = with_measure({{written(format::phrase("check"), locale), 0.35}, {part_head, 0.26}}, locale);
    for (const CheckResults& check : checks) {
        const checks::CheckResult& worst = check.worst();
        table.rows.push_back(with_measure(
            {{written(worst.title, locale), false, check_name(check.id)},
             words_cell(
                 written(wording::worst_of(model::part_name(worst.part), check.results.size(), alike(check)), locale))},
            measure(worst), locale));
    }
    return table;
}

std::string link_to_check(const review::Review& review, const std::string& id) {
    const bool known = std::any_of(review.checks.begin(), review.checks.end(),
                                   [&id](const checks::CheckResult& result) { return result.id == id; });
    return known ? check_name(id) : std::string();
}

}  // namespace toehold::paper::report
