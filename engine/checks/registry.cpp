#include "checks/registry.h"

#include "catalog/resolve.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace toehold::checks {
namespace {

// Function-local, so that a check may register during the start of the program in any order.
template <class Entry>
std::vector<Entry>& entries() {
    static std::vector<Entry> all;
    return all;
}

template <class Entry>
void add(Entry entry) {
    auto& all = entries<Entry>();
    const auto place =
        std::lower_bound(all.begin(), all.end(), entry, [](const Entry& a, const Entry& b) { return a.id < b.id; });
    if (place != all.end() && place->id == entry.id) throw std::logic_error("registered twice: " + entry.id);
    all.insert(place, std::move(entry));
}

bool contains_or_empty(const std::vector<model::MountKind>& mounts, model::MountKind mount) {
    return mounts.empty() || std::find(mounts.begin(), mounts.end(), mount) != mounts.end();
}

void require_finite(const CheckResult& result) {
    bool sound = std::isfinite(result.demand) && std::isfinite(result.capacity) && !std::isnan(result.ratio);
    for (const Step& step : result.steps) sound = sound && std::isfinite(step.value);
    if (!sound)
        throw std::runtime_error("check " + result.id + " on " + model::key(result.part) +
                                 " gave a number that is not finite");
}

/// The code's clause, then what else it rests on.
std::string joined(const std::optional<model::Provision>& provision, model::BuildingCode code,
                   const std::string& others) {
    if (!provision) return others;
    const std::string of_code = model::clause(code, *provision);
    return others.empty() ? of_code : of_code + "; " + others;
}

std::vector<Finding> named(std::vector<Finding> findings, const FindingRule& rule, const model::Basis& basis) {
    for (Finding& finding : findings) {
        if (finding.id.empty()) finding.id = rule.id;
        if (finding.title.empty()) finding.title = rule.title;
        finding.cause = rule.cause;
        if (finding.clause.empty()) finding.clause = clause_of(rule, model::building_code(basis));
    }
    return findings;
}

}  // namespace

const std::vector<Check>& registered_checks() { return entries<Check>(); }
const std::vector<FindingRule>& registered_findings() { return entries<FindingRule>(); }
void add_check(Check check) { add(std::move(check)); }
void add_finding_rule(FindingRule rule) { add(std::move(rule)); }

bool applies(const Check& check, model::MountKind mount) { return contains_or_empty(check.mounts, mount); }
bool applies(const FindingRule& rule, model::MountKind mount) { return contains_or_empty(rule.mounts, mount); }

std::string clause_of(const Check& check, model::BuildingCode code) {
    return joined(check.provision, code, check.clause);
}
std::string clause_of(const FindingRule& rule, model::BuildingCode code) {
    return joined(rule.provision, code, rule.clause);
}

std::vector<const Check*> checks_of(model::MountKind mount) {
    std::vector<const Check*> all;
    for (const Check& check : registered_checks()) {
        if (applies(check, mount)) all.push_back(&check);
    }
    return all;
}

std::vector<CheckResult> run(const Check& check, const CheckInput& input) {
    if (!applies(check, kind(input.resolved.detail.mount))) return {};
    std::vector<CheckResult> results = check.function(input);
    for (CheckResult& result : results) {
        if (result.id.empty()) result.id = check.id;
        if (result.title.empty()) result.title = check.title;
        if (result.clause.empty()) result.clause = clause_of(check, model::building_code(input.resolved.detail.basis));
        require_finite(result);
    }
    return results;
}

std::vector<Finding> run(const FindingRule& rule, const catalog::Resolved& resolved) {
    if (!rule.function || !applies(rule, kind(resolved.detail.mount))) return {};
    return named(rule.function(resolved), rule, resolved.detail.basis);
}

std::vector<Finding> run(const FindingRule& rule, const CheckInput& input) {
    if (!rule.under_load || !applies(rule, kind(input.resolved.detail.mount))) return {};
    return named(rule.under_load(input), rule, input.resolved.detail.basis);
}

}  // namespace toehold::checks
