#include "review/facts.h"

#include "catalog/resolve.h"
#include "checks/registry.h"
#include "demand/demand.h"

#include <algorithm>
#include <tuple>

namespace toehold::review {
namespace {

using checks::CheckResult;
using checks::Severity;
using checks::Status;
using model::PartId;

bool touches(const CheckResult& result, const PartId& part) {
    const PartId one = model::whole(part);
    if (model::whole(result.part) == one) return true;
    return result.link && (model::whole(result.link->from) == one || model::whole(result.link->to) == one);
}

/// Two results of one part, of neighbors in the load path, or of kinds that are not counted one by one.
bool meet(const CheckResult& cause, const CheckResult& effect) {
    if (cause.part.id.empty() || effect.part.id.empty()) return true;
    if (touches(cause, effect.part) || touches(effect, cause.part)) return true;
    return cause.link && effect.link && touches(effect, cause.link->to) && !cause.link->to.id.empty();
}

class Causes {
  public:
    Causes(const std::vector<CheckResult>& results, const CausesOf& causes) : results_(results) {
        for (std::size_t at = 0; at < results.size(); ++at) {
            if (!fails(results[at])) continue;
            failing_.push_back(at);
            effects_.push_back(causes(results[at].id));
        }
    }

    [[nodiscard]] std::optional<FirstCause> first() const {
        std::optional<Candidate> best;
        for (const bool unexplained_alone : {true, false}) {
            for (std::size_t one = 0; one < failing_.size(); ++one) {
                if (unexplained_alone && is_explained(one)) continue;
                const Candidate candidate{failing_[one], explained_by(one)};
                if (!best || before(candidate, *best)) best = candidate;
            }
            if (best) break;  // else every failure follows from another, in a circle
        }
        if (!best) return std::nullopt;
        return FirstCause{fact_of(results_[best->result]), best->explained, best->result};
    }

  private:
    struct Candidate {
        std::size_t result, explained;
    };
    [[nodiscard]] bool makes(std::size_t cause, std::size_t effect) const {
        const CheckResult& first = results_[failing_[cause]];
        const CheckResult& second = results_[failing_[effect]];
        const std::vector<std::string>& ids = effects_[cause];
        return first.id != second.id && std::find(ids.begin(), ids.end(), second.id) != ids.end() &&
               meet(first, second);
    }
    [[nodiscard]] bool is_explained(std::size_t effect) const {
        for (std::size_t cause = 0; cause < failing_.size(); ++cause) {
            if (makes(cause, effect)) return true;
        }
        return false;
    }
    /// Failures that follow from this one, from those, and so on.
    [[nodiscard]] std::size_t explained_by(std::size_t cause) const {
        std::vector<bool> reached(failing_.size(), false);
        std::vector<std::size_t> open{cause};
        reached[cause] = true;
        std::size_t count = 0;
        while (!open.empty()) {
            const std::size_t from = open.back();
            open.pop_back();
            for (std::size_t to = 0; to < failing_.size(); ++to) {
                if (reached[to] || !makes(from, to)) continue;
                reached[to] = true;
                open.push_back(to);
                ++count;
            }
        }
        return count;
    }
    [[nodiscard]] bool before(const Candidate& a, const Candidate& b) const {
        const CheckResult& one = results_[a.result];
        const CheckResult& other = results_[b.result];
        return std::tuple(b.explained, one.part.kind, other.ratio, one.id, one.part) <
               std::tuple(a.explained, other.part.kind, one.ratio, other.id, other.part);
    }

    const std::vector<CheckResult>& results_;
    std::vector<std::size_t> failing_;               ///< places among the results
    std::vector<std::vector<std::string>> effects_;  ///< ids of what follows from each of them
};

}  // namespace

CheckFact fact_of(const CheckResult& result) {
    CheckFact fact;
    fact.check = result.id;
    fact.title = result.title;
    fact.part = result.part;
    fact.status = result.status;
    fact.ratio = result.ratio;
    fact.note = result.note;
    return fact;
}

bool fails(const CheckResult& result) { return result.status == Status::fails || result.status == Status::no_path; }

bool Counts::adequate() const {
    return checks() > 0 && pass == checks() && findings_fail == 0 && findings_missing == 0;
}

std::optional<double> Shortfall::factor() const {
    if (capacity <= 0.0) return std::nullopt;
    return demand / capacity;
}

Counts counts(const std::vector<CheckResult>& results, const std::vector<checks::Finding>& findings) {
    Counts counts;
    for (const CheckResult& result : results) {
        switch (result.status) {
            case Status::holds:
                ++counts.pass;
                break;
            case Status::fails:
                ++counts.fail;
                break;
            case Status::no_path:
                ++counts.no_path;
                break;
            case Status::missing_evidence:
                ++counts.not_specified;
                break;
        }
    }
    for (const checks::Finding& finding : findings) {
        switch (finding.severity) {
            case Severity::fails:
                ++counts.findings_fail;
                break;
            case Severity::missing:
                ++counts.findings_missing;
                break;
            case Severity::caution:
                ++counts.cautions;
                break;
        }
    }
    return counts;
}

std::optional<FirstCause> first_cause(const std::vector<CheckResult>& results, const CausesOf& causes) {
    return Causes(results, causes).first();
}

std::optional<FirstCause> first_cause(const std::vector<CheckResult>& results) {
    return first_cause(results, [](const std::string& id) -> std::vector<std::string> {
        const std::vector<checks::Check>& all = checks::registered_checks();
        const auto check =
            std::find_if(all.begin(), all.end(), [&id](const checks::Check& one) { return one.id == id; });
        return check == all.end() ? std::vector<std::string>() : check->causes;
    });
}

std::optional<FindingFact> first_finding(const std::vector<checks::Finding>& findings,
                                         const std::optional<FirstCause>& cause) {
    if (findings.empty() || findings.front().severity != Severity::fails) return std::nullopt;
    const checks::Finding& gravest = findings.front();
    const bool comes_first = gravest.cause == checks::Cause::geometry ||
                             (gravest.cause == checks::Cause::load_path && cause && cause->status != Status::no_path);
    if (cause && !comes_first) return std::nullopt;
    return FindingFact{gravest.id, gravest.title, gravest.part, gravest.message};
}

std::optional<CheckFact> not_specified(const std::vector<CheckResult>& results) {
    const auto first = std::find_if(results.begin(), results.end(), [](const CheckResult& result) {
        return result.status == Status::missing_evidence;
    });
    if (first == results.end()) return std::nullopt;
    return fact_of(*first);
}

std::optional<LargestTension> largest_tension(const catalog::Resolved& resolved, const demand::Demand& demand) {
    const std::vector<demand::AnchorEnvelope>& anchors = demand.anchors;
    if (anchors.empty()) return std::nullopt;
    const auto worst = std::max_element(anchors.begin(), anchors.end(),
                                        [](const auto& a, const auto& b) { return a.tension_lb < b.tension_lb; });
    LargestTension largest;
    largest.part = model::anchor_part(resolved.anchors.at(static_cast<std::size_t>(worst - anchors.begin())).id);
    largest.tension_lb = worst->tension_lb;
    largest.direction_rad = worst->direction_rad;
    largest.hand_edge_lb = worst->hand_edge_lb;
    if (worst->state < demand.states.size()) {
        const demand::ActingLoad load = demand::acting_load(demand, demand.states[worst->state]);
        largest.push_lb = load.push_lb;
        largest.height_in = load.height_in;
    }
    return largest;
}

}  // namespace toehold::review
