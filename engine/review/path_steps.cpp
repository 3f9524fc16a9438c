#include "review/path_steps.h"

#include <algorithm>
#include <string_view>

namespace toehold::review {
namespace {

using review::PathLink;

/// `anchor` of `anchor A`.
std::string_view kind(std::string_view name) { return name.substr(0, name.find(' ')); }

bool alike(const PathLink& a, const PathLink& b, Alike by) {
    return kind(a.link.from) == kind(b.link.from) && kind(a.link.to) == kind(b.link.to) &&
           (by == Alike::things || a.link.by == b.link.by);
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
            return 0;
    }
    return 0;
}

bool worse(const PathLink& a, const PathLink& b) {
    if (a.status != b.status) return gravity(a.status) > gravity(b.status);
    return a.ratio > b.ratio;
}

}  // namespace

std::vector<PathStep> path_steps(const std::vector<PathLink>& path, Alike by) {
    std::vector<PathStep> steps;
    for (const PathLink& link : path) {
        const auto same =
            std::find_if(steps.begin(), steps.end(), [&](const PathStep& step) { return alike(step.worst, link, by); });
        if (same == steps.end()) {
            steps.push_back({link});
            continue;
        }
        ++same->count;
        if (worse(link, same->worst)) same->worst = link;
    }
    return steps;
}

}  // namespace toehold::review
