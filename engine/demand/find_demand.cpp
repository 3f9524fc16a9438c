#include "demand/by_duration.h"
#include "demand/envelope.h"
#include "demand/framing/find_framing.h"
#include "demand/loads/load_cases.h"
#include "demand/mount.h"
#include "demand/stiffness_range.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::demand {
namespace {

constexpr std::size_t fewest_all_round = 8;  // fewer directions are the only ones asked for

State solve(const Demand& demand, MountSolver& solver, std::size_t load_case, std::size_t scenario,
            double direction_rad) {
    State state =
        solver.solve({acting(demand.cases[load_case], direction_rad), demand.scenarios[scenario], direction_rad});
    state.load_case = load_case;
    state.scenario = scenario;
    return state;
}

bool acts(const LoadCase& load, double direction_rad) {
    return load.down_lb != 0.0 || acting(load, direction_rad).push_lb > 0.0;
}

void solve_directions(Demand& demand, MountSolver& solver) {
    for (std::size_t load_case = 0; load_case < demand.cases.size(); ++load_case) {
        const LoadCase& load = demand.cases[load_case];
        if (load.covered_by) continue;
        for (std::size_t scenario = 0; scenario < demand.scenarios.size(); ++scenario) {
            for (const double direction : load.directions_rad) {
                if (acts(load, direction))
                    demand.states.push_back(solve(demand, solver, load_case, scenario, direction));
            }
        }
    }
}

/// Golden-section search between the neighbours of the best direction sampled: tension is smooth and has one peak
/// there.
void refine(Demand& demand, MountSolver& solver, std::size_t anchor, LoadDuration duration) {
    const State best = demand.states[worst_state_of(demand, anchor, duration)];
    const std::vector<double>& directions = demand.cases[best.load_case].directions_rad;
    if (directions.size() < fewest_all_round) return;
    const double step_rad = directions[1] - directions[0];
    const double golden = 0.5 * (std::sqrt(5.0) - 1.0);
    constexpr double close_enough_rad = 1e-5;
    double low = best.direction_rad - step_rad;
    double high = best.direction_rad + step_rad;
    const auto at = [&](double direction) { return solve(demand, solver, best.load_case, best.scenario, direction); };
    State left = at(high - golden * (high - low));
    State right = at(low + golden * (high - low));
    while (high - low > close_enough_rad) {
        if (left.anchors[anchor].tension_lb > right.anchors[anchor].tension_lb) {
            high = right.direction_rad;
            right = std::move(left);
            left = at(high - golden * (high - low));
        } else {
            low = left.direction_rad;
            left = std::move(right);
            right = at(low + golden * (high - low));
        }
    }
    State& peak = left.anchors[anchor].tension_lb > right.anchors[anchor].tension_lb ? left : right;
    if (peak.anchors[anchor].tension_lb <= best.anchors[anchor].tension_lb) return;
    peak.direction_rad = std::fmod(peak.direction_rad + 2.0 * std::numbers::pi, 2.0 * std::numbers::pi);
    demand.states.push_back(std::move(peak));
}

void solve_all(Demand& demand, MountSolver& solver, const catalog::Resolved& resolved, bool peaks) {
    demand.states.clear();
    solve_directions(demand, solver);
    if (!peaks) return;
    for (const LoadDuration duration : durations(demand)) {
        for (std::size_t anchor = 0; anchor < resolved.anchors.size(); ++anchor)
            refine(demand, solver, anchor, duration);
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
    return {acting(demand, worst), demand.scenarios[worst.scenario], worst.direction_rad};
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

/// The same base under the test's push alone.
Demand under_test(const catalog::Resolved& resolved, MountSolver& solver, Demand test, const LoadCase& push) {
    test.cases = {push};
    test.states.clear();
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

Demand compute(const catalog::Resolved& resolved, const Sampling& sampling) {
    const std::unique_ptr<MountSolver> solver = make_mount_solver(resolved, sampling);
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
        demand.proof_test = std::make_shared<const Demand>(under_test(resolved, *solver, demand, *test));
    return demand;
}

}  // namespace

Outcome find_demand(const catalog::Resolved& resolved, const Sampling& sampling) {
    Outcome outcome;
    try {
        outcome.demand = compute(resolved, sampling);
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
