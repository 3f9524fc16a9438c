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

/// The value of a step; throws when no step has that symbol.
inline double step_value(const checks::CheckResult& result, const std::string& symbol) {
    const auto found = std::find_if(result.steps.begin(), result.steps.end(),
                                    [&](const checks::Step& step) { return step.symbol == symbol; });
    if (found == result.steps.end()) throw std::logic_error("no step " + symbol + " in " + result.id);
    return found->value;
}

}  // namespace toehold::test
