#include "review/verdict.h"

#include <algorithm>
#include <tuple>

namespace toehold::review {
namespace {

using checks::Status;

int rank(Status status) {
    switch (status) {
        case Status::no_path:
        case Status::fails:
            return 0;
        case Status::missing_evidence:
            return 1;
        case Status::holds:
            return 2;
    }
    return 2;
}

/// Where no check fails: the strength nearest to its limit.
const checks::CheckResult& nearest_its_limit(const std::vector<checks::CheckResult>& sorted) {
    const auto counts = [](const checks::CheckResult& result) {
        return result.status == Status::holds && !is_dimension(result);
    };
    const auto first = std::find_if(sorted.begin(), sorted.end(), counts);
    return first != sorted.end() ? *first : sorted.front();
}

Governing governing_of(const checks::CheckResult& result) {
    return {fact_of(result), result.direction_deg, result.demand, result.capacity, result.unit, result.link};
}

}  // namespace

bool is_dimension(const checks::CheckResult& result) { return result.unit == "in"; }

void sort_worst_first(std::vector<checks::CheckResult>& results) {
    std::stable_sort(results.begin(), results.end(), [](const checks::CheckResult& a, const checks::CheckResult& b) {
        const int rank_a = rank(a.status);
        const int rank_b = rank(b.status);
        const auto one = std::tie(rank_a, b.ratio, a.id), other = std::tie(rank_b, a.ratio, b.id);
        return one == other ? model::key(a.part) < model::key(b.part) : one < other;
    });
}

void sort_gravest_first(std::vector<checks::Finding>& findings) {
    std::stable_sort(findings.begin(), findings.end(), [](const checks::Finding& a, const checks::Finding& b) {
        const auto one = std::tie(a.severity, a.cause, a.id), other = std::tie(b.severity, b.cause, b.id);
        return one == other ? model::key(a.part) < model::key(b.part) : one < other;
    });
}

void conclude(Review& review) {
    review.facts.counts = counts(review.checks, review.findings);
    review.facts.first_cause = first_cause(review.checks);
    review.facts.first_finding = first_finding(review.findings, review.facts.first_cause);
    review.facts.not_specified = not_specified(review.checks);
    if (!review.findings.empty() && review.findings.front().severity != checks::Severity::caution) {
        review.facts.finding = review.findings.front().message;
    }
    if (!review.checks.empty()) {
        const auto& cause = review.facts.first_cause;
        const checks::CheckResult& first = cause ? review.checks[cause->result] : nearest_its_limit(review.checks);
        review.governing = governing_of(first);
        if (fails(first)) review.facts.shortfall = Shortfall{first.demand, first.capacity, first.unit};
    }
    if (review.demand) {
        review.facts.largest_tension = largest_tension(review.resolved, *review.demand);
        if (review.demand->bending) review.facts.framing_change = review.demand->bending->framing_change;
    }
    const Counts& counts = review.facts.counts;
    if (counts.failing() > 0 || counts.findings_fail > 0) {
        review.verdict = Verdict::inadequate;
    } else {
        review.verdict = counts.adequate() ? Verdict::adequate : Verdict::incomplete;
    }
}

int gravity(Verdict verdict) {
    switch (verdict) {
        case Verdict::inadequate:
            return 2;
        case Verdict::incomplete:
            return 1;
        case Verdict::adequate:
            break;
    }
    return 0;
}

}  // namespace toehold::review
