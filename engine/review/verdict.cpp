#include "review/verdict.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace toehold::review {
namespace {

using checks::Severity;
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

std::string ratio_words(double ratio) {
    return std::isinf(ratio) ? std::string("nothing there to resist it")
                             : fmt::format("demand over capacity {:.2f}", ratio);
}

std::string where(const checks::CheckResult& result) { return result.title + ", " + result.subject; }

/// The result to name first: the worst; where everything holds, the strength nearest to its limit.
const checks::CheckResult& leading(const std::vector<checks::CheckResult>& sorted) {
    const auto counts = [](const checks::CheckResult& result) {
        if (result.status == Status::missing_evidence) return false;
        return result.status != Status::holds || !is_dimension(result);
    };
    const auto first = std::find_if(sorted.begin(), sorted.end(), counts);
    return first != sorted.end() ? *first : sorted.front();
}

template <class Items, class Is>
auto count(const Items& items, Is&& is) {
    return std::count_if(items.begin(), items.end(), is);
}

std::string inadequate_reason(const Review& review, long failing_checks, long failing_findings) {
    std::string reason;
    if (failing_checks > 0) {
        const checks::CheckResult& worst = review.checks.front();
        reason = fmt::format("{}: {}", where(worst), ratio_words(worst.ratio));
        if (failing_checks > 1) reason += fmt::format("; {} results in all do not hold", failing_checks);
    }
    if (failing_findings > 0) {
        reason += (reason.empty() ? "" : ". Also: ") + review.findings.front().message;
    }
    return reason;
}

std::string incomplete_reason(const Review& review) {
    for (const checks::CheckResult& result : review.checks) {
        if (result.status == Status::missing_evidence) {
            return "evidence is missing: " + where(result) + (result.note.empty() ? "" : ": " + result.note);
        }
    }
    for (const checks::Finding& finding : review.findings) {
        if (finding.severity == Severity::missing) return finding.message;
    }
    return "no check could be made";
}

}  // namespace

bool is_dimension(const checks::CheckResult& result) { return result.unit == "in"; }

void sort_worst_first(std::vector<checks::CheckResult>& results) {
    std::stable_sort(results.begin(), results.end(), [](const checks::CheckResult& a, const checks::CheckResult& b) {
        const int rank_a = rank(a.status);
        const int rank_b = rank(b.status);
        return std::tie(rank_a, b.ratio, a.id, a.subject) < std::tie(rank_b, a.ratio, b.id, b.subject);
    });
}

void sort_gravest_first(std::vector<checks::Finding>& findings) {
    std::stable_sort(findings.begin(), findings.end(), [](const checks::Finding& a, const checks::Finding& b) {
        return std::tie(a.severity, a.id, a.subject) < std::tie(b.severity, b.id, b.subject);
    });
}

void conclude(Review& review) {
    const auto does_not_hold = [](const checks::CheckResult& result) { return rank(result.status) == 0; };
    const auto lacks_evidence = [](const checks::CheckResult& result) {
        return result.status == Status::missing_evidence;
    };
    const long failing = count(review.checks, does_not_hold);
    const long missing = count(review.checks, lacks_evidence);
    const long findings_fail =
        count(review.findings, [](const checks::Finding& f) { return f.severity == Severity::fails; });
    const long findings_miss =
        count(review.findings, [](const checks::Finding& f) { return f.severity == Severity::missing; });
    if (!review.checks.empty()) {
        const checks::CheckResult& worst = leading(review.checks);
        review.governing = {worst.id, worst.title, worst.subject, worst.ratio, worst.direction_deg};
    }
    if (failing > 0 || findings_fail > 0) {
        review.verdict = Verdict::inadequate;
        review.reason = inadequate_reason(review, failing, findings_fail);
    } else if (missing > 0 || findings_miss > 0 || review.checks.empty()) {
        review.verdict = Verdict::incomplete;
        review.reason = incomplete_reason(review);
    } else {
        review.verdict = Verdict::adequate;
        review.reason = fmt::format("every check holds; the strength nearest to its limit is {}: {}",
                                    where(leading(review.checks)), ratio_words(leading(review.checks).ratio));
    }
}

}  // namespace toehold::review
