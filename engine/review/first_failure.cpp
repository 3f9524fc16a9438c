#include "review/first_failure.h"

#include "catalog/resolve.h"
#include "checks/at_least.h"
#include "checks/registry.h"
#include "demand/by_duration.h"

#include <cmath>
#include <utility>
#include <vector>

namespace toehold::review {
namespace {

using checks::CheckResult;
using checks::Status;

constexpr double no_noise = 1.0;  // lb, psi or lb in

bool fails_surely(const CheckResult& result, States states) {
    switch (result.status) {
        case Status::holds:
            return false;
        case Status::missing_evidence:
            return true;
        case Status::no_path:
            return states == States::all || result.demand >= no_noise;
        case Status::fails:
            break;
    }
    return states == States::all || result.ratio > least_sampled_ratio;
}

/// Something not specified is the least of failures: its part may be no other's.
std::pair<bool, double> gravity_of(const CheckResult& result) {
    return {result.status != Status::missing_evidence, result.ratio};
}

std::optional<FirstFailure> worst_of(const std::vector<CheckResult>& results, States states) {
    const CheckResult* worst = nullptr;
    for (const CheckResult& result : results) {
        if (!fails_surely(result, states)) continue;
        if (worst == nullptr || gravity_of(result) > gravity_of(*worst)) worst = &result;
    }
    if (worst == nullptr) return std::nullopt;
    const bool missing = worst->status == Status::missing_evidence;
    return FirstFailure{worst->id, worst->part, worst->status, missing ? 0.0 : worst->ratio};
}

std::optional<FirstFailure> first_of_one_duration(const catalog::Resolved& resolved, const demand::Demand& demand,
                                                  States states, checks::Prepared& prepared) {
    const checks::CheckInput input{resolved, demand, &prepared};
    for (const checks::Check& check : checks::registered_checks()) {
        const auto results = states == States::sampled ? checks::run_at_least(check, input) : checks::run(check, input);
        if (auto failure = worst_of(results, states)) return failure;
    }
    return std::nullopt;
}

}  // namespace

std::optional<FirstFailure> first_failure(const catalog::Resolved& resolved, const demand::Demand& demand,
                                          States states, checks::Prepared* prepared) {
    const std::vector<demand::LoadDuration> durations = demand::durations(demand);
    for (const demand::LoadDuration duration : durations) {
        catalog::Resolved for_these = resolved;
        for_these.detail.basis = demand::for_duration(resolved.detail.basis, duration);
        checks::Prepared own;
        auto failure = durations.size() == 1
                           ? first_of_one_duration(for_these, demand, states, prepared != nullptr ? *prepared : own)
                           : first_of_one_duration(for_these, demand::of_duration(demand, duration), states, own);
        if (failure) return failure;
    }
    return std::nullopt;
}

}  // namespace toehold::review
