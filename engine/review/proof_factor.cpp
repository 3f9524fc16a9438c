// The forces on anchors and bed grow in proportion to the push (contact without preload), what a check makes of them
// does not: torsion acts with the square of shear, the deck's own load does not grow at all. So the checks are run
// again under the grown load until the first stands at its limit.
#include "review/proof_factor.h"

#include "catalog/resolve.h"
#include "checks/registry.h"
#include "demand/envelope.h"
#include "demand/framing/find_framing.h"
#include "demand/loads/code_loads.h"
#include "review/verdict.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

namespace toehold::review {
namespace {

using demand::Demand;
using demand::State;

void scale(State& state, double factor) {
    for (demand::AnchorForce& anchor : state.anchors) {
        anchor.tension_lb *= factor;
        anchor.shear_x_lb *= factor;
        anchor.shear_y_lb *= factor;
    }
    for (demand::SupportForce& support : state.supports) {
        support.force_lb *= factor;
        support.peak_psi *= factor;
    }
    for (double& tension : state.rigid_tension_lb) tension *= factor;
    state.rotation_rad *= factor;
    state.rigid_rotation_rad *= factor;
}

/// The states of one case alone, under `factor` times its push.
Demand of_case(const catalog::Resolved& resolved, const Demand& all, std::size_t load_case, double factor) {
    Demand one = all;
    one.states.clear();
    one.cases[load_case].push_lb *= factor;
    for (const State& state : all.states) {
        if (state.load_case != load_case) continue;
        one.states.push_back(state);
        scale(one.states.back(), factor);
    }
    demand::find_envelopes_again(one);
    one.framing = demand::find_framing(resolved, one);
    return one;
}

bool is_strength(const checks::CheckResult& result) {
    return result.status != checks::Status::missing_evidence && !is_dimension(result);
}

/// The checks that can be first to reach their limit: a ratio grows no faster than with the square of the load.
std::set<std::string> candidates(const std::vector<checks::CheckResult>& results) {
    double largest = 0.0;
    for (const checks::CheckResult& result : results) {
        if (is_strength(result)) largest = std::max(largest, result.ratio);
    }
    constexpr double for_certain = 0.8;
    const double least = for_certain * std::min(largest, largest * largest);
    std::set<std::string> ids;
    for (const checks::CheckResult& result : results) {
        if (is_strength(result) && result.ratio >= least) ids.insert(result.id);
    }
    return ids;
}

/// The strength nearest its limit, or past it; absent: none, or one that has no load path.
std::optional<checks::CheckResult> worst(const catalog::Resolved& resolved, const Demand& demand,
                                         const std::set<std::string>& ids) {
    std::optional<checks::CheckResult> found;
    for (const checks::Check& check : checks::registered_checks()) {
        if (!ids.contains(check.id)) continue;
        for (checks::CheckResult& result : checks::run(check, {resolved, demand})) {
            if (!is_strength(result)) continue;
            if (!std::isfinite(result.ratio)) return std::nullopt;
            if (!found || result.ratio > found->ratio) found = std::move(result);
        }
    }
    return found;
}

}  // namespace

std::optional<ProofFactor> proof_factor(const catalog::Resolved& resolved, const Demand& demand,
                                        const std::vector<checks::CheckResult>& results) {
    if (model::preloaded(resolved.detail) || demand.cases.empty()) return std::nullopt;
    const demand::LoadCase& code = demand.cases.front();
    const std::size_t solved = code.covered_by.value_or(0);
    const double of_solved = code.push_lb / demand.cases.at(solved).push_lb;
    constexpr int most_trials = 6;
    constexpr double close_enough = 0.005, most = 100.0, least = 0.01;
    const std::set<std::string> ids = candidates(results);
    double multiple = 1.0;
    for (int trial = 0; trial < most_trials; ++trial) {
        const std::optional<checks::CheckResult> first =
            worst(resolved, of_case(resolved, demand, solved, of_solved * multiple), ids);
        if (!first || !(first->ratio > 0.0)) return std::nullopt;
        if (std::abs(first->ratio - 1.0) <= close_enough)
            return ProofFactor{multiple, demand::code_concentrated_lb, first->title, first->part};
        multiple /= first->ratio;
        if (!(multiple < most) || !(multiple > least)) return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace toehold::review
