#include "review/load_path.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <string_view>

namespace toehold::review {
namespace {

using checks::Status;

constexpr std::string_view nowhere = "nothing described";

/// `block` of `block B1`.
std::string_view first_word(std::string_view name) { return name.substr(0, name.find(' ')); }

/// How far down a thing stands, by the first word of its name: `ends of block B1`, `joists at rim R1` and `supports of
/// joist J1` are what a member's own strength carries to.
std::size_t depth(std::string_view name) {
    constexpr std::array<std::string_view, 17> downwards = {"guard",  "post", "shoe",   "plate",   "anchor", "decking",
                                                            "block",  "ends", "joist",  "rim",     "joists", "supports",
                                                            "ledger", "beam", "boards", "framing", "nothing"};
    const auto place = std::find(downwards.begin(), downwards.end(), first_word(name));
    return static_cast<std::size_t>(place - downwards.begin());
}

bool is_member(std::string_view name) {
    const std::string_view word = first_word(name);
    return word == "block" || word == "joist" || word == "rim";
}

/// Whether the link is a member's own strength, which ends where its holds begin.
bool is_own_strength(const checks::Link& link) {
    return link.to.size() > link.from.size() &&
           link.to.compare(link.to.size() - link.from.size(), link.from.size(), link.from) == 0;
}

bool carries(const checks::CheckResult& result) {
    constexpr double nothing = 1e-6;
    return result.status == Status::no_path || result.status == Status::missing_evidence ||
           std::abs(result.demand) > nothing;
}

/// A rim stands in the joists' ends, so that what joins a joist to it holds the rim as well.
bool holds(const PathLink& path, const std::string& member) {
    if (path.link.from == member) return !is_own_strength(path.link);
    return path.link.to == member && first_word(member) == "rim" && first_word(path.link.from) == "joist";
}

/// What leads into each member that nothing leads on from, the worst first met.
std::vector<PathLink> dead_ends(const std::vector<PathLink>& path) {
    std::vector<PathLink> found;
    for (const PathLink& into : path) {
        const std::string& member = is_member(into.link.to) ? into.link.to : into.link.from;
        if (!is_member(member)) continue;
        const auto held = [&](const PathLink& other) { return holds(other, member); };
        const auto same = [&](const PathLink& other) { return other.link.from == member; };
        if (std::any_of(path.begin(), path.end(), held) || std::any_of(found.begin(), found.end(), same)) continue;
        found.push_back({{member, std::string(nowhere), "nothing that holds it"},
                         into.check,
                         into.demand,
                         0.0,
                         into.unit,
                         std::numeric_limits<double>::infinity(),
                         Status::no_path});
    }
    return found;
}

bool before(const PathLink& a, const PathLink& b) {
    const std::array<std::size_t, 2> depth_a = {depth(a.link.from), depth(a.link.to)};
    const std::array<std::size_t, 2> depth_b = {depth(b.link.from), depth(b.link.to)};
    if (depth_a != depth_b) return depth_a < depth_b;
    if (a.link.from != b.link.from) return a.link.from < b.link.from;
    if (a.link.to != b.link.to) return a.link.to < b.link.to;
    return a.link.by < b.link.by;
}

}  // namespace

std::vector<PathLink> load_path(const std::vector<checks::CheckResult>& results) {
    std::vector<PathLink> path;
    for (const checks::CheckResult& result : results) {
        if (!result.link || !carries(result)) continue;
        const bool known =
            std::any_of(path.begin(), path.end(), [&](const PathLink& link) { return link.link == *result.link; });
        if (known) continue;
        path.push_back(
            {*result.link, result.id, result.demand, result.capacity, result.unit, result.ratio, result.status});
    }
    const std::vector<PathLink> stopped = dead_ends(path);
    path.insert(path.end(), stopped.begin(), stopped.end());
    std::stable_sort(path.begin(), path.end(), before);
    return path;
}

}  // namespace toehold::review
