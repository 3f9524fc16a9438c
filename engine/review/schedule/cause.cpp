#include "review/schedule/cause.h"

#include "review/line/line_review.h"
#include "review/review.h"

#include <cmath>

namespace toehold::review {
namespace {

std::optional<double> known_ratio(const CheckFact& fact) {
    const bool known = fact.status != checks::Status::missing_evidence && std::isfinite(fact.ratio);
    return known ? std::optional(fact.ratio) : std::nullopt;
}

Cause of_check(const CheckFact& fact) { return {fact.check, fact.title, fact.part, known_ratio(fact)}; }

}  // namespace

Cause cause_of(const Review& review) {
    const Facts& facts = review.facts;
    if (review.verdict == Verdict::adequate) return of_check(review.governing);
    if (facts.first_finding)
        return {facts.first_finding->rule, facts.first_finding->title, facts.first_finding->part, std::nullopt};
    if (facts.first_cause) return of_check(*facts.first_cause);
    if (facts.not_specified) return of_check(*facts.not_specified);
    if (review.findings.empty()) return {};
    const checks::Finding& gravest = review.findings.front();
    return {gravest.id, gravest.title, gravest.part, std::nullopt};
}

Cause cause_of(const LineReview& line) { return line.cause ? of_check(*line.cause) : Cause{}; }

}  // namespace toehold::review
