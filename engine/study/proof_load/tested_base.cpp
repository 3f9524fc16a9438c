#include "study/proof_load/tested_base.h"

#include "catalog/resolve.h"
#include "checks/registry.h"
#include "demand/by_duration.h"
#include "demand/envelope.h"
#include "demand/framing/find_framing.h"
#include "demand/in_proportion.h"
#include "demand/loads/load_cases.h"
#include "demand/mount.h"
#include "demand/peak.h"
#include "model/mount.h"

#include <memory>
#include <numbers>
#include <utility>

namespace toehold::study {
namespace {

using demand::Demand;
using demand::MountSolver;
using format::phrase;

constexpr double outward_rad = 0.5 * std::numbers::pi;

catalog::Resolved asked_for_test(catalog::Resolved resolved, double push_lb) {
    resolved.detail.loads.proof_push_lb = push_lb;
    resolved.detail.basis.method = model::Method::asd;
    return resolved;
}

/// The state at the center of stiffness, the plate's mesh fine enough for its largest tension.
Demand solve(const catalog::Resolved& resolved, MountSolver& solver, bool framing_gives) {
    constexpr int trials = 3;
    Demand demand;
    demand.cases = {demand::proof_case(resolved.detail).value()};
    demand.scenarios = {{1.0, 1.0, framing_gives}};
    demand.supports = solver.supports();
    for (int trial = 0; trial < trials; ++trial) {
        demand.states = {demand::solve_state(demand, solver, 0, 0, outward_rad)};
        const demand::Push push{demand::acting_load(demand, demand.states.front()), demand.scenarios.front(),
                                outward_rad};
        if (!solver.accurate(push)) continue;
        demand::find_envelopes(demand, solver);
        // Checks of a post on a side read what holds for the mount as a whole.
        if (kind(resolved.detail.mount) == model::MountKind::side_fastened) solver.complete(demand, push);
        demand.framing = demand::find_framing(resolved, demand);
        return demand;
    }
    throw demand::NoDemand(phrase("the base's largest tension still changes by more than 1% with its mesh"));
}

TestedBase tested(const catalog::Resolved& resolved, double push_lb) {
    const std::unique_ptr<MountSolver> solver = demand::make_mount_solver(resolved);
    TestedBase base;
    base.push_lb = push_lb;
    base.height_in = model::lever_height_in(resolved.detail);
    for (const bool framing_gives : {false, true}) {
        if (framing_gives && !solver->framing_can_flex()) break;
        TestedState state;
        state.framing_gives = framing_gives;
        state.demand = solve(resolved, *solver, framing_gives);
        state.push_lb = push_lb;
        base.central.push_back(std::move(state));
    }
    return base;
}

}  // namespace

TestedBaseOutcome test_base(const catalog::Resolved& resolved, double push_lb) {
    TestedBaseOutcome outcome;
    if (model::preloaded(resolved.detail)) {
        outcome.failure = phrase(
            "An anchor has a stated preload, so that its tension does not grow with the push: no breaking load can be "
            "given. Leave out `preload`; wood lets go of it.");
        return outcome;
    }
    try {
        outcome.base = tested(asked_for_test(resolved, push_lb), push_lb);
    } catch (const demand::NoDemand& fault) {
        outcome.failure = fault.why;
    }
    return outcome;
}

TestedState under(const catalog::Resolved& resolved, const TestedState& state, double push_lb) {
    const double times = push_lb / state.push_lb;
    return {state.framing_gives, demand::under_push(asked_for_test(resolved, push_lb), state.demand, 0, times), push_lb,
            std::make_shared<checks::Prepared>(state.prepared->grown(times))};
}

std::vector<checks::CheckResult> check_state(catalog::Resolved resolved, const TestedState& state,
                                             model::Moisture moisture) {
    model::Basis& basis = resolved.detail.basis;
    basis.method = model::Method::asd;
    basis.load_duration = 1.0;
    basis.moisture = moisture;
    std::vector<checks::CheckResult> results;
    for (const checks::Check& check : checks::registered_checks()) {
        for (checks::CheckResult& result : checks::run(check, {resolved, state.demand, state.prepared.get()}))
            results.push_back(std::move(result));
    }
    return results;
}

}  // namespace toehold::study
