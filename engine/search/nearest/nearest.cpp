#include "search/nearest/nearest.h"

#include "format/figures.h"
#include "review/first_failure.h"
#include "review/review.h"
#include "review/verdict.h"
#include "search/nearest/bears_on.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

namespace toehold::search {
namespace {

using format::Listed;
using format::Phrase;
using format::phrase;

constexpr std::size_t most_evaluated = 24;
constexpr double infinite = std::numeric_limits<double>::infinity();

bool by_ratio(const Judgement& judgement) { return judgement.ratio > 0.0; }

/// A probe's ratio may exceed the whole's worst where the whole refines its mesh.
double least_worst(const Judgement& judgement) {
    return judgement.stage == Stage::probe ? judgement.ratio / review::least_sampled_ratio : judgement.ratio;
}

/// Those with a ratio by it, then those stopped by a finding; both by candidate where equal.
std::vector<Judgement> in_order(const std::vector<Judgement>& judged) {
    std::vector<Judgement> order;
    for (const Judgement& judgement : judged) {
        if (judgement.stage != Stage::choice && !judgement.holds) order.push_back(judgement);
    }
    std::sort(order.begin(), order.end(), [](const Judgement& a, const Judgement& b) {
        if (by_ratio(a) != by_ratio(b)) return by_ratio(a);
        const double first = least_worst(a), second = least_worst(b);
        return first != second ? first < second : a.candidate < b.candidate;
    });
    return order;
}

/// How far a candidate is from holding: the worst ratio of a failing check, beyond every ratio where a finding forbids
/// it.
struct Miss {
    NearestMiss nearest;
    double worst = infinite;
};

const checks::CheckResult* worst_of(const review::Review& review) {
    const checks::CheckResult* worst = nullptr;
    for (const checks::CheckResult& result : review.checks) {
        if (result.status != checks::Status::fails && result.status != checks::Status::no_path) continue;
        if (worst == nullptr || result.ratio > worst->ratio) worst = &result;
    }
    return worst;
}

std::optional<Miss> evaluated(const Space& space, const catalog::Catalog& catalog, Candidate candidate) {
    std::optional<model::BaseDetail> detail = detail_of(space, candidate);
    if (!detail) return std::nullopt;
    const std::optional<catalog::Resolved> resolved = sound(*detail, catalog);
    if (!resolved) return std::nullopt;
    const review::Review review = review::evaluate(*resolved, {});
    Miss miss;
    NearestMiss& nearest = miss.nearest;
    nearest.candidate = candidate;
    nearest.detail = std::move(*detail);
    nearest.failing = review.facts.counts.failing() + review.facts.counts.findings_fail;
    if (const checks::CheckResult* const worst = worst_of(review)) {
        nearest.limit = worst->id;
        nearest.title = worst->title;
        nearest.part = worst->part;
        nearest.ratio = worst->ratio;
        miss.worst = worst->ratio;
    }
    if (review.facts.counts.findings_fail == 0) return miss;
    if (miss.worst == infinite) {
        nearest.limit = review.findings.front().id;
        nearest.title = review.findings.front().title;
        nearest.part = review.findings.front().part;
        nearest.ratio = 0.0;
    }
    miss.worst = infinite;
    return miss;
}

Phrase capacity_lacking(double ratio) {
    if (!(ratio > 0.0)) return phrase("It must not occur.");
    if (!std::isfinite(ratio)) return phrase("Something must be there to resist it.");
    return phrase("The limit is exceeded: demand/capacity {}.", format::ratio_text(ratio));
}

/// `plate thickness (5/8 in, the last of its range)`.
Phrase axis_words(const Axis& axis, std::size_t chosen) {
    const std::string& label = axis.options[chosen].label;
    return chosen + 1 == axis.options.size() ? phrase("{} ({}, the last in its range)", axis.title, label)
                                             : phrase("{} ({})", axis.title, label);
}

}  // namespace

Phrase would_change(const Space& space, Candidate candidate, const std::string& limit, double ratio) {
    const std::vector<std::size_t> chosen = choices(space, candidate);
    Listed varied, fixed;
    const model::MountKind mount = kind(space.base.detail.mount);
    for (const std::string_view id : axes_on(limit, mount)) {
        const auto axis =
            std::find_if(space.axes.begin(), space.axes.end(), [&](const Axis& one) { return one.id == id; });
        if (axis == space.axes.end()) {
            fixed.items.push_back(format::verbatim(std::string(id)));
        } else {
            varied.items.push_back(axis_words(*axis, chosen[static_cast<std::size_t>(axis - space.axes.begin())]));
        }
    }
    const Phrase lacking = capacity_lacking(ratio);
    if (varied.items.empty() && fixed.items.empty() && mount == model::MountKind::side_fastened)
        return phrase("{} No range bears on it: change the post or the loads.", lacking);
    if (varied.items.empty() && fixed.items.empty())
        return phrase("{} No range bears on it: change the post, its weld or the loads.", lacking);
    if (varied.items.empty()) return phrase("{} Nothing that bears on it was varied. Try: {}.", lacking, fixed);
    if (fixed.items.empty()) return phrase("{} Widen the range of one of these: {}.", lacking, varied);
    return phrase("{} Widen the range of one of these: {}. Not varied so far: {}.", lacking, varied, fixed);
}

std::optional<NearestMiss> nearest_miss(const Space& space, const catalog::Catalog& catalog,
                                        const std::vector<Judgement>& judged, const std::function<bool()>& stop) {
    if (std::any_of(judged.begin(), judged.end(), [](const Judgement& one) { return one.holds; })) return std::nullopt;
    std::optional<Miss> best;
    std::size_t count = 0;
    for (const Judgement& judgement : in_order(judged)) {
        if (count == most_evaluated || (stop && stop())) break;
        const double bound = by_ratio(judgement) ? least_worst(judgement) : infinite;
        if (best && best->worst < bound) break;
        std::optional<Miss> miss = evaluated(space, catalog, judgement.candidate);
        if (!miss) continue;
        ++count;
        const bool nearer =
            !best || miss->worst < best->worst ||
            (miss->worst == best->worst &&
             (miss->nearest.failing < best->nearest.failing ||
              (miss->nearest.failing == best->nearest.failing && miss->nearest.candidate < best->nearest.candidate)));
        if (nearer) best = std::move(miss);
    }
    if (!best) return std::nullopt;
    best->nearest.would_change = would_change(space, best->nearest.candidate, best->nearest.limit, best->nearest.ratio);
    return best->nearest;
}

}  // namespace toehold::search
