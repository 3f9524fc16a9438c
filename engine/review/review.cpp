#include "review/review.h"

#include "checks/registry.h"
#include "review/assumptions.h"
#include "review/load_path.h"
#include "review/memory/used.h"
#include "review/proof_factor.h"
#include "review/run_checks.h"
#include "review/verdict.h"

#include <stdexcept>
#include <utility>

namespace toehold::review {
namespace {

checks::Finding overturning(const demand::Outcome& outcome) {
    checks::Finding finding;
    finding.id = "no-equilibrium";
    finding.severity = checks::Severity::fails;
    finding.part = {model::PartKind::base};
    finding.title = format::phrase("No equilibrium");
    finding.cause = checks::Cause::load_path;
    finding.clause = "statics";
    finding.message =
        format::phrase("{}. Add anchors and bearing on every side, or block more of the footprint.", outcome.failure);
    return finding;
}

/// What every rule finds in this: a detail, or a detail under load.
template <class Looked>
void add_findings(std::vector<checks::Finding>& findings, const Looked& looked_at) {
    for (const checks::FindingRule& rule : checks::registered_findings()) {
        for (checks::Finding& finding : checks::run(rule, looked_at)) findings.push_back(std::move(finding));
    }
}

}  // namespace

Review evaluate(const catalog::Resolved& resolved, const std::string& input_sha256, demand::Kept* kept) {
    return evaluate(resolved, demand::find_demand(resolved, demand::Sampling::whole(), kept), input_sha256);
}

Review evaluate(const catalog::Resolved& resolved, demand::Outcome outcome, const std::string& input_sha256,
                checks::Asked asked) {
    Review result;
    result.detail = resolved.detail.name;
    result.input_sha256 = input_sha256;
    result.resolved = resolved;
    add_findings(result.findings, resolved);
    if (outcome.demand) {
        result.check_runs = std::make_shared<CheckRuns>(asked);
        result.checks = result.check_runs->run(resolved, *outcome.demand);
        add_findings(result.findings, checks::CheckInput{resolved, *outcome.demand});
        result.load_path = load_path(result.checks);
        result.demand = std::move(outcome.demand);
    } else if (outcome.overturns) {
        result.no_demand = outcome.failure;
        result.findings.push_back(overturning(outcome));
    } else {
        throw std::runtime_error(format::english(outcome.failure));
    }
    sort_gravest_first(result.findings);
    conclude(result);
    return result;
}

Review review(const catalog::Resolved& resolved, const std::string& input_sha256, demand::Kept* kept) {
    Review result = evaluate(resolved, input_sha256, kept);
    add_assumptions(result);
    return result;
}

void add_assumptions(Review& evaluated, const Stop& stop) {
    const std::shared_ptr<CheckRuns> runs = std::exchange(evaluated.check_runs, nullptr);
    if (evaluated.demand) {
        CheckRuns anew;
        evaluated.assumptions = assumptions(evaluated, runs ? *runs : anew, stop);
        if (!stop || !stop()) {
            evaluated.facts.proof_factor = proof_factor(evaluated.resolved, *evaluated.demand, evaluated.checks);
        }
    }
    evaluated.cautions = cautions();
    if (format::Phrase memory = memory_caution(evaluated); !memory.empty())
        evaluated.cautions.push_back(std::move(memory));
}

Review::Review() = default;
Review::Review(const Review&) = default;
Review::Review(Review&&) noexcept = default;
Review& Review::operator=(const Review&) = default;
Review& Review::operator=(Review&&) noexcept = default;
Review::~Review() = default;

}  // namespace toehold::review
