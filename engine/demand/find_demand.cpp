#include "demand/load_cases.h"
#include "demand/solver.h"
#include "mechanics/lever_arm.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::demand {
namespace {

std::vector<StiffnessScenario> scenarios(const model::Basis& basis) {
    if (basis.stiffness) return {{1.0, 1.0}};
    std::vector<StiffnessScenario> all;
    for (const double bed : {1.0, 0.5, 2.0}) {
        for (const double anchors : {1.0, 0.5, 2.0}) all.push_back({bed, anchors});
    }
    return all;
}

void solve_all(Demand& demand, Solver& solver, const std::vector<double>& all_directions) {
    for (std::size_t load_case = 0; load_case < demand.cases.size(); ++load_case) {
        for (std::size_t scenario = 0; scenario < demand.scenarios.size(); ++scenario) {
            for (const double direction : all_directions) {
                demand.states.push_back(solver.solve(demand.cases, load_case, demand.scenarios, scenario, direction));
            }
        }
    }
}

double tension_lb(const Demand& demand, std::size_t state, std::size_t anchor) {
    return demand.states[state].anchors[anchor].tension_lb;
}

std::size_t worst_state_of(const Demand& demand, std::size_t anchor) {
    std::size_t worst = 0;
    for (std::size_t state = 1; state < demand.states.size(); ++state) {
        if (tension_lb(demand, state, anchor) > tension_lb(demand, worst, anchor)) worst = state;
    }
    return worst;
}

/// Golden-section search between the neighbours of the best direction sampled: tension is smooth and has one peak
/// there.
void refine(Demand& demand, Solver& solver, std::size_t anchor, double step_rad) {
    const State best = demand.states[worst_state_of(demand, anchor)];
    const double golden = 0.5 * (std::sqrt(5.0) - 1.0);
    constexpr double close_enough_rad = 1e-5;
    double low = best.direction_rad - step_rad;
    double high = best.direction_rad + step_rad;
    const auto at = [&](double direction) {
        return solver.solve(demand.cases, best.load_case, demand.scenarios, best.scenario, direction);
    };
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

/// Smallest, over the scenarios, of the largest tension; and the nominal scenario's largest.
void find_range(const Demand& demand, std::size_t anchor, AnchorEnvelope& envelope) {
    std::vector<double> largest(demand.scenarios.size(), 0.0);
    for (const State& state : demand.states) {
        largest[state.scenario] = std::max(largest[state.scenario], state.anchors[anchor].tension_lb);
    }
    envelope.tension_low_lb = *std::min_element(largest.begin(), largest.end());
    for (std::size_t scenario = 0; scenario < largest.size(); ++scenario) {
        if (demand.scenarios[scenario].nominal()) envelope.nominal_tension_lb = largest[scenario];
    }
}

AnchorEnvelope envelope_of(const Demand& demand, std::size_t anchor, const Stiffness& stiffness) {
    AnchorEnvelope envelope;
    envelope.state = worst_state_of(demand, anchor);
    const State& worst = demand.states[envelope.state];
    envelope.tension_lb = worst.anchors[anchor].tension_lb;
    envelope.direction_rad = worst.direction_rad;
    envelope.proof_tension_lb = envelope.tension_lb / demand.cases[worst.load_case].load_factor * proof_factor;
    for (const State& state : demand.states)
        envelope.shear_lb = std::max(envelope.shear_lb, state.anchors[anchor].shear_lb());
    find_range(demand, anchor, envelope);
    envelope.stiffness_lb_per_in = stiffness.value;
    envelope.stiffness_source = stiffness.source;
    return envelope;
}

/// Directions a paper calculation looks at: square to the plate's sides, as far as the loads ask for them. Turned by a
/// few degrees, the method would put the whole moment on one anchor.
std::vector<double> hand_directions(const model::Loads& loads) {
    constexpr double quarter = 0.5 * std::numbers::pi;
    if (loads.directions == model::Directions::outward) return {quarter};
    return {0.0, quarter, 2.0 * quarter, 3.0 * quarter};
}

void add_hand_tensions(Demand& demand, const Solver& solver, const model::BaseDetail& detail) {
    using mechanics::hand_tension;
    using mechanics::LeverArm;
    const mechanics::Polygon plate = outline(detail.plate);
    for (const LoadCase& load : demand.cases) {
        const double moment = load.push_lb * load.height_in;
        for (const double direction : hand_directions(detail.loads)) {
            const auto edge = hand_tension(solver.anchor_points(), plate, moment, direction, LeverArm::to_edge);
            const auto row = hand_tension(solver.anchor_points(), plate, moment, direction, LeverArm::to_anchor);
            for (std::size_t anchor = 0; anchor < demand.anchors.size(); ++anchor) {
                AnchorEnvelope& envelope = demand.anchors[anchor];
                envelope.hand_edge_lb = std::max(envelope.hand_edge_lb, edge.tension_lb[anchor]);
                envelope.hand_anchor_lb = std::max(envelope.hand_anchor_lb, row.tension_lb[anchor]);
            }
        }
    }
}

void find_peak_bearing(Demand& demand) {
    for (std::size_t state = 0; state < demand.states.size(); ++state) {
        for (const SupportForce& support : demand.states[state].supports) {
            if (support.peak_psi <= demand.peak_bearing_psi) continue;
            demand.peak_bearing_psi = support.peak_psi;
            demand.peak_bearing_state = state;
        }
    }
}

std::vector<std::string> assumptions(const Bed& bed, const model::Basis& basis) {
    std::vector<std::string> all = bed.assumptions;
    all.push_back(
        "The plate is rigid, the bed presses and never pulls, anchors pull and never push; holes in the plate are not "
        "taken out of the bed.");
    all.push_back(
        "Shear is shared equally by the anchors, with the twist of an off-centre post; friction carries none of it.");
    if (basis.stiffness) {
        all.push_back("Bed and anchor stiffness are fixed by the user: " + basis.stiffness->reason + ".");
    } else {
        all.push_back(
            "Bed and anchor stiffness are estimates: the demand is the largest found with each of them halved, as "
            "computed, and doubled.");
    }
    return all;
}

Demand compute(const catalog::Resolved& resolved) {
    Solver solver(resolved);
    Demand demand;
    demand.cases = load_cases(resolved.detail);
    demand.scenarios = scenarios(resolved.detail.basis);
    demand.supports = solver.bed().supports;
    demand.assumptions = assumptions(solver.bed(), resolved.detail.basis);
    const std::vector<double> all_directions = directions(resolved.detail.loads);
    solve_all(demand, solver, all_directions);
    if (all_directions.size() > 1) {
        for (std::size_t anchor = 0; anchor < resolved.anchors.size(); ++anchor) {
            refine(demand, solver, anchor, all_directions[1] - all_directions[0]);
        }
    }
    for (std::size_t anchor = 0; anchor < resolved.anchors.size(); ++anchor) {
        demand.anchors.push_back(envelope_of(demand, anchor, solver.anchor_stiffnesses()[anchor]));
    }
    add_hand_tensions(demand, solver, resolved.detail);
    find_peak_bearing(demand);
    demand.proof = solver.proof();
    return demand;
}

}  // namespace

Outcome find_demand(const catalog::Resolved& resolved) {
    Outcome outcome;
    try {
        outcome.demand = compute(resolved);
    } catch (const Overturns& overturns) {
        outcome.failure = overturns.what();
        outcome.overturns = true;
        outcome.overturn_direction_rad = overturns.direction_rad;
    } catch (const std::runtime_error& fault) {
        outcome.failure = fault.what();
    }
    return outcome;
}

}  // namespace toehold::demand
