#include "demand/by_duration.h"
#include "demand/envelope.h"
#include "demand/framing/find_framing.h"
#include "demand/loads/load_cases.h"
#include "demand/mount.h"
#include "demand/peak.h"
#include "demand/stiffness_range.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::demand {
namespace {

bool acts(const LoadCase& load, double direction_rad) {
    return load.down_lb != 0.0 || acting_load(load, direction_rad).push_lb > 0.0;
}

void solve_directions(Demand& demand, MountSolver& solver) {
    for (std::size_t load_case = 0; load_case < demand.cases.size(); ++load_case) {
        const LoadCase& load = demand.cases[load_case];
        if (load.covered_by) continue;
        for (std::size_t scenario = 0; scenario < demand.scenarios.size(); ++scenario) {
            for (const double direction : load.directions_rad) {
                if (acts(load, direction))
                    demand.states.push_back(solve_state(demand, solver, load_case, scenario, direction));
            }
        }
    }
}

void solve_all(Demand& demand, MountSolver& solver, const catalog::Resolved& resolved, bool peaks) {
    demand.states.clear();
    solve_directions(demand, solver);
    if (!peaks) return;
    for (const LoadDuration duration : durations(demand)) {
        for (std::size_t anchor = 0; anchor < resolved.anchors.size(); ++anchor)
            add_peak(demand, solver, anchor, duration);
    }
}

Push governing_push(const Demand& demand) {
    std::size_t state = 0, anchor = 0;
    for (std::size_t other = 0; other < demand.states.front().anchors.size(); ++other) {
        const std::size_t candidate = worst_state_of(demand, other);
        if (demand.states[candidate].anchors[other].tension_lb <= demand.states[state].anchors[anchor].tension_lb)
            continue;
        state = candidate;
        anchor = other;
    }
    const State& worst = demand.states[state];
    return {acting_load(demand, worst), demand.scenarios[worst.scenario], worst.direction_rad};
}

/// Every state, by a solver that has refined itself as far as it needs.
void solve_accurately(Demand& demand, MountSolver& solver, const catalog::Resolved& resolved, bool peaks) {
    constexpr int trials = 3;
    for (int trial = 0; trial < trials; ++trial) {
        solve_all(demand, solver, resolved, peaks);
        if (solver.accurate(governing_push(demand))) return;
    }
    throw NoDemand(format::phrase("the flexible plate's largest tension still changes by more than 1% with its mesh"));
}

/// The same base under the test's push alone. `test`: the demand without its states.
Demand under_test(const catalog::Resolved& resolved, MountSolver& solver, Demand test, const LoadCase& push) {
    test.cases = {push};
    solve_directions(test, solver);
    find_envelopes(test, solver);
    test.framing = find_framing(resolved, test);
    return test;
}

void thin_out(std::vector<LoadCase>& cases, std::size_t every) {
    for (LoadCase& load : cases) {
        if (load.directions_rad.size() < fewest_all_round) continue;
        std::vector<double> kept;
        for (std::size_t i = 0; i < load.directions_rad.size(); i += every) kept.push_back(load.directions_rad[i]);
        load.directions_rad = std::move(kept);
    }
}

Demand compute(const catalog::Resolved& resolved, const Sampling& sampling, Kept* kept) {
    const std::unique_ptr<MountSolver> solver = make_mount_solver(resolved, sampling, kept);
    Demand demand;
    demand.cases = load_cases(resolved.detail);
    thin_out(demand.cases, sampling.every);
    Ranges ranges = stiffness_ranges(resolved, solver->framing_can_flex());
    demand.scenarios = std::move(ranges.scenarios);
    if (!sampling.all_stiffnesses) demand.scenarios.resize(1);  // the center comes first
    demand.bed_range = std::move(ranges.bed);
    demand.anchor_range = std::move(ranges.anchors);
    demand.supports = solver->supports();
    if (sampling.measured) {
        solve_accurately(demand, *solver, resolved, sampling.peaks);
    } else {
        solve_all(demand, *solver, resolved, sampling.peaks);
    }
    find_envelopes(demand, *solver);
    demand.rotational_stiffness = find_rotational_stiffness(demand);
    solver->complete(demand, governing_push(demand));
    demand.framing = find_framing(resolved, demand);
    if (demand.framing) {
        demand.assumptions.insert(demand.assumptions.end(), demand.framing->assumptions.begin(),
                                  demand.framing->assumptions.end());
    }
    if (const std::optional<LoadCase> test = proof_case(resolved.detail))
        demand.proof_test =
            std::make_shared<const Demand>(under_test(resolved, *solver, without_states(demand), *test));
    return demand;
}

}  // namespace

Outcome find_demand(const catalog::Resolved& resolved, const Sampling& sampling, Kept* kept) {
    Outcome outcome;
    try {
        outcome.demand = compute(resolved, sampling, kept);
    } catch (const Overturns& overturns) {
        outcome.failure = overturns.why;
        outcome.overturns = true;
        outcome.overturn_direction_rad = overturns.direction_rad;
    } catch (const NoDemand& fault) {
        outcome.failure = fault.why;
    }
    return outcome;
}

}  // namespace toehold::demand
