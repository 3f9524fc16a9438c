#pragma once
// One registered check or finding rule, by its id, as a review would run it.
#include "checks/registry.h"

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

namespace toehold::test {

inline std::vector<checks::CheckResult> run_check(const std::string& id, const catalog::Resolved& resolved,
                                                  const demand::Demand& demand) {
    for (const checks::Check& check : checks::registered_checks())
        if (check.id == id) return checks::run(check, {resolved, demand});
    throw std::logic_error("no such check: " + id);
}

inline std::vector<checks::Finding> run_finding(const std::string& id, const catalog::Resolved& resolved) {
    for (const checks::FindingRule& rule : checks::registered_findings())
        if (rule.id == id) return checks::run(rule, resolved);
    throw std::logic_error("no such finding rule: " + id);
}

/// What the rule finds under load.
inline std::vector<checks::Finding> run_finding(const std::string& id, const catalog::Resolved& resolved,
                                                const demand::Demand& demand) {
    for (const checks::FindingRule& rule : checks::registered_findings())
        if (rule.id == id) return checks::run(rule, checks::CheckInput{resolved, demand});
    throw std::logic_error("no such finding rule: " + id);
}

/// The key of the part a result or a finding is about.
template <class About>
std::string about(const About& result) {
    return model::key(result.part);
}

/// A result's link, `block B1 > joist J1: bearing`; empty without one.
inline std::string link_words(const checks::CheckResult& result) {
    if (!result.link) return {};
    return model::key(result.link->from) + " > " + model::key(result.link->to) + ": " +
           format::english(result.link->by);
}
inline std::string link_from(const checks::CheckResult& result) { return model::key(result.link.value().from); }
inline std::string link_to(const checks::CheckResult& result) { return model::key(result.link.value().to); }

inline bool says(const format::Phrase& phrase, const std::string& words) {
    return format::english(phrase).find(words) != std::string::npos;
}

/// The value of a step; throws when no step has that symbol.
inline double step_value(const checks::CheckResult& result, const std::string& symbol) {
    const auto found = std::find_if(result.steps.begin(), result.steps.end(),
                                    [&](const checks::Step& step) { return step.symbol == symbol; });
    if (found == result.steps.end()) throw std::logic_error("no step " + symbol + " in " + result.id);
    return found->value;
}

}  // namespace toehold::test
