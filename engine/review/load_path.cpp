#include "review/load_path.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>
#include <utility>

namespace toehold::review {
namespace {

using checks::Status;
using model::PartId;
using model::PartKind;
using model::PartPiece;

/// A whole one, or one the file should name and does not: what supports a member is not a member itself.
bool is_member(const PartId& part) {
    const bool kind = part.kind == PartKind::block || part.kind == PartKind::joist || part.kind == PartKind::rim;
    const bool one = part.piece == PartPiece::whole && !part.id.empty();
    return kind && (one || part.piece == PartPiece::not_described);
}

/// Whether the link is a member's own strength, which ends where its supports begin.
bool is_own_strength(const checks::Link& link) {
    return link.to.piece == PartPiece::supports && link.to.kind == link.from.kind && link.to.id == link.from.id;
}

bool carries(const checks::CheckResult& result) {
    constexpr double nothing = 1e-6;
    return result.status == Status::no_path || result.status == Status::missing_evidence ||
           std::abs(result.demand) > nothing;
}

/// A rim stands in the joists' ends, so that what joins a joist to it holds the rim as well.
bool holds(const PathLink& path, const PartId& member) {
    if (path.link.from == member) return !is_own_strength(path.link);
    return path.link.to == member && member.kind == PartKind::rim && path.link.from.kind == PartKind::joist;
}

/// What leads into each member that nothing leads on from, the worst first met.
std::vector<PathLink> dead_ends(const std::vector<PathLink>& path) {
    std::vector<PathLink> found;
    for (const PathLink& into : path) {
        const PartId& member = is_member(into.link.to) ? into.link.to : into.link.from;
        if (!is_member(member)) continue;
        const auto held = [&](const PathLink& other) { return holds(other, member); };
        const auto same = [&](const PathLink& other) { return other.link.from == member; };
        if (std::any_of(path.begin(), path.end(), held) || std::any_of(found.begin(), found.end(), same)) continue;
        PathLink end;
        end.link.from = member;
        end.link.to = {PartKind::none, {}, PartPiece::not_described};
        end.link.by = format::phrase("no connection");
        end.check = into.check;
        end.demand = into.demand;
        end.unit = into.unit;
        end.ratio = std::numeric_limits<double>::infinity();
        end.status = Status::no_path;
        found.push_back(std::move(end));
    }
    return found;
}

/// How far down a part stands: `PartKind` is in the order of the load path; a member's supports stand below it, what
/// holds all joists below every rim, and what is not described is the end.
int depth(const PartId& part) {
    constexpr int step = 4, end = 1000;
    if (part.kind == PartKind::none) return end;
    if (part.kind == PartKind::plug_in) return end + 1;
    const bool supports = part.piece == PartPiece::supports;
    if (part.kind == PartKind::joist && (supports || part.id.empty()))
        return step * static_cast<int>(PartKind::rim) + (supports ? 2 : 1);
    return step * static_cast<int>(part.kind) + (supports ? 1 : 0);
}

bool before(const PathLink& a, const PathLink& b) {
    const auto place = [](const PathLink& path) { return std::pair(depth(path.link.from), depth(path.link.to)); };
    if (place(a) != place(b)) return place(a) < place(b);
    if (a.link.from != b.link.from) return a.link.from < b.link.from;
    if (a.link.to != b.link.to) return a.link.to < b.link.to;
    return a.check < b.check;
}

bool alike(const PathLink& a, const PathLink& b, Alike by) {
    const auto kinds = [](const checks::Link& link) {
        return std::tuple(link.from.kind, link.from.piece, link.to.kind, link.to.piece);
    };
    return kinds(a.link) == kinds(b.link) && (by == Alike::things || a.link.by == b.link.by);
}

int gravity(Status status) {
    switch (status) {
        case Status::no_path:
            return 3;
        case Status::fails:
            return 2;
        case Status::missing_evidence:
            return 1;
        case Status::holds:
            return 0;
    }
    return 0;
}

bool worse(const PathLink& a, const PathLink& b) {
    if (a.status != b.status) return gravity(a.status) > gravity(b.status);
    return a.ratio > b.ratio;
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
