#include "paper/report/results.h"

#include "checks/registry.h"
#include "paper/report/blocks.h"

#include <algorithm>

namespace toehold::paper::report {
namespace {

/// `anchor` of `anchor A`.
std::string_view kind(std::string_view name) { return name.substr(0, name.find(' ')); }

bool alike(const review::PathLink& a, const review::PathLink& b) {
    return kind(a.link.from) == kind(b.link.from) && kind(a.link.to) == kind(b.link.to);
}

int gravity(checks::Status status) {
    switch (status) {
        case checks::Status::no_path:
            return 3;
        case checks::Status::fails:
            return 2;
        case checks::Status::missing_evidence:
            return 1;
        case checks::Status::holds:
            break;
    }
    return 0;
}

bool worse(const review::PathLink& a, const review::PathLink& b) {
    if (a.status != b.status) return gravity(a.status) > gravity(b.status);
    return a.ratio > b.ratio;
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

std::vector<LinkResults> links_alike(const std::vector<review::PathLink>& path) {
    std::vector<LinkResults> all;
    for (const review::PathLink& link : path) {
        const auto same =
            std::find_if(all.begin(), all.end(), [&link](const LinkResults& one) { return alike(one.worst, link); });
        if (same == all.end()) {
            all.push_back({link});
            continue;
        }
        ++same->count;
        if (worse(link, same->worst)) same->worst = link;
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
