#include "review/groups.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace toehold::review {
namespace {

bool near(double one, double other) {
    if (!std::isfinite(one) || !std::isfinite(other)) return std::isfinite(one) == std::isfinite(other);
    return std::abs(one - other) <= alike_within * std::max(std::abs(one), std::abs(other));
}

bool of_one_kind(const model::PartId& one, const model::PartId& other) {
    return one.kind == other.kind && one.piece == other.piece && one.at_kind == other.at_kind;
}

}  // namespace

bool alike(const checks::CheckResult& one, const checks::CheckResult& other) {
    return one.id == other.id && one.title == other.title && one.status == other.status &&
           of_one_kind(one.part, other.part) && near(one.ratio, other.ratio);
}

std::vector<Group> grouped(const std::vector<checks::CheckResult>& results, const std::vector<std::size_t>& among) {
    std::vector<Group> groups;
    for (const std::size_t at : among) {
        const auto fits = std::find_if(groups.begin(), groups.end(),
                                       [&](const Group& group) { return alike(results[group.worst()], results[at]); });
        if (fits != groups.end()) {
            fits->results.push_back(at);
        } else {
            groups.push_back({{at}});
        }
    }
    return groups;
}

std::vector<Group> grouped(const std::vector<checks::CheckResult>& results) {
    std::vector<std::size_t> all(results.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return grouped(results, all);
}

}  // namespace toehold::review
