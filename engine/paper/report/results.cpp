#include "paper/report/results.h"

#include "checks/registry.h"
#include "paper/report/blocks.h"

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

std::string covers(const std::string& check) {
    const auto& all = checks::registered_checks();
    const auto known = std::find_if(all.begin(), all.end(), [&check](const auto& one) { return one.id == check; });
    return known == all.end() ? std::string() : known->covers;
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
