#include "search/judge/judge.h"

#include "checks/registry.h"
#include "demand/demand.h"
#include "demand/kept.h"
#include "model/validate.h"
#include "review/first_failure.h"
#include "review/review.h"
#include "review/verdict.h"
#include "search/space/builder.h"

#include <utility>

namespace toehold::search {
namespace {

Judgement at(Candidate candidate, Stage stage) {
    Judgement judgement;
    judgement.candidate = candidate;
    judgement.stage = stage;
    return judgement;
}

Judgement stopped_by(Judgement judgement, const checks::Finding& finding) {
    judgement.limit = finding.id;
    judgement.part = finding.part;
    return judgement;
}

/// The first that forbids the detail, failing ones before missing evidence.
std::optional<checks::Finding> forbidding(const catalog::Resolved& resolved) {
    std::vector<checks::Finding> findings;
    for (const checks::FindingRule& rule : checks::registered_findings()) {
        for (checks::Finding& finding : checks::run(rule, resolved)) findings.push_back(std::move(finding));
    }
    review::sort_gravest_first(findings);
    if (findings.empty() || findings.front().severity == checks::Severity::caution) return std::nullopt;
    return findings.front();
}

Judgement overturned(Candidate candidate, Stage stage) {
    Judgement judgement = at(candidate, stage);
    judgement.limit = no_equilibrium;
    judgement.part = {model::PartKind::base};
    return judgement;
}

/// What some of the pushes show; absent: they prove nothing.
std::optional<Judgement> by_probe(const catalog::Resolved& resolved, Candidate candidate, demand::Kept& kept) {
    const demand::Outcome outcome = demand::find_demand(resolved, demand::Sampling::probe(), &kept);
    if (outcome.overturns) return overturned(candidate, Stage::probe);
    if (!outcome.demand) return std::nullopt;
    const auto failure = review::first_failure(resolved, *outcome.demand, review::States::sampled);
    if (!failure) return std::nullopt;
    Judgement judgement = at(candidate, Stage::probe);
    judgement.limit = failure->check;
    judgement.part = failure->part;
    judgement.ratio = failure->ratio;
    return judgement;
}

Judgement by_review(const catalog::Resolved& resolved, Candidate candidate, demand::Kept& kept) {
    demand::Outcome outcome = demand::find_demand(resolved, demand::Sampling::whole(), &kept);
    if (outcome.overturns) return overturned(candidate, Stage::whole);
    Judgement judgement = at(candidate, Stage::whole);
    if (!outcome.demand) {
        judgement.limit = not_solved;
        judgement.part = {model::PartKind::base};
        return judgement;
    }
    const review::Review review = review::evaluate(resolved, std::move(outcome), {});
    judgement.holds = review.verdict == review::Verdict::adequate;
    const bool by_check = judgement.holds || review.facts.counts.failing() > 0 || review.findings.empty() ||
                          review.findings.front().severity == checks::Severity::caution;
    if (!by_check) return stopped_by(std::move(judgement), review.findings.front());
    const review::CheckFact& governs =
        !judgement.holds && review.facts.counts.failing() == 0 && review.facts.not_specified
            ? *review.facts.not_specified
            : review.governing;
    judgement.limit = governs.check;
    judgement.part = governs.part;
    judgement.ratio = governs.status == checks::Status::missing_evidence ? 0.0 : governs.ratio;
    return judgement;
}

}  // namespace

std::optional<catalog::Resolved> sound(const model::BaseDetail& detail, const catalog::Catalog& catalog) {
    if (!model::validate(detail).empty()) return std::nullopt;
    return catalog::resolve(detail, catalog).resolved;
}

struct Judge::Kept {
    const catalog::Catalog& catalog;
    Builder builder;
    demand::Kept demand = {};
};

Judge::Judge(const Space& space, const catalog::Catalog& catalog)
    : kept_(std::make_unique<Kept>(Kept{catalog, Builder(space)})) {}
Judge::~Judge() = default;

Judgement Judge::judge(Candidate candidate) {
    const model::BaseDetail* const detail = kept_->builder.detail(candidate);
    if (detail == nullptr) return at(candidate, Stage::choice);
    const std::optional<catalog::Resolved> resolved = sound(*detail, kept_->catalog);
    if (!resolved) return at(candidate, Stage::choice);
    if (const auto finding = forbidding(*resolved)) return stopped_by(at(candidate, Stage::finding), *finding);
    if (auto judgement = by_probe(*resolved, candidate, kept_->demand)) return *judgement;
    return by_review(*resolved, candidate, kept_->demand);
}

Judgement judge(const Space& space, const catalog::Catalog& catalog, Candidate candidate) {
    return Judge(space, catalog).judge(candidate);
}

std::string_view word(Stage stage) {
    switch (stage) {
        case Stage::choice:
            return "choice";
        case Stage::finding:
            return "finding";
        case Stage::probe:
            return "probe";
        case Stage::whole:
            break;
    }
    return "whole";
}

}  // namespace toehold::search
