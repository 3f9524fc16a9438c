#include "review/load_path.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace toehold::review {
namespace {

/// How far down a thing stands, by the first word of its name.
std::size_t depth(std::string_view name) {
    constexpr std::array<std::string_view, 8> downwards = {"guard",  "post",    "shoe",  "plate",
                                                           "anchor", "decking", "block", "joist"};
    const std::string_view word = name.substr(0, name.find(' '));
    const auto place = std::find(downwards.begin(), downwards.end(), word);
    return static_cast<std::size_t>(place - downwards.begin());
}

}  // namespace

std::vector<PathLink> load_path(const std::vector<checks::CheckResult>& results) {
    std::vector<PathLink> path;
    for (const checks::CheckResult& result : results) {
        if (!result.link) continue;
        const bool known =
            std::any_of(path.begin(), path.end(), [&](const PathLink& link) { return link.link == *result.link; });
        if (known) continue;
        path.push_back(
            {*result.link, result.id, result.demand, result.capacity, result.unit, result.ratio, result.status});
    }
    std::stable_sort(path.begin(), path.end(), [](const PathLink& a, const PathLink& b) {
        const std::array<std::size_t, 2> depth_a = {depth(a.link.from), depth(a.link.to)};
        const std::array<std::size_t, 2> depth_b = {depth(b.link.from), depth(b.link.to)};
        if (depth_a != depth_b) return depth_a < depth_b;
        if (a.link.from != b.link.from) return a.link.from < b.link.from;
        if (a.link.to != b.link.to) return a.link.to < b.link.to;
        return a.link.by < b.link.by;
    });
    return path;
}

}  // namespace toehold::review
