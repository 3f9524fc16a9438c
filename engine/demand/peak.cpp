#include "demand/peak.h"

#include "demand/envelope.h"

#include <cmath>
#include <numbers>
#include <utility>
#include <vector>

namespace toehold::demand {

State solve_state(const Demand& demand, MountSolver& solver, std::size_t load_case, std::size_t scenario,
                  double direction_rad) {
    State state =
        solver.solve({acting_load(demand.cases[load_case], direction_rad), demand.scenarios[scenario], direction_rad});
    state.load_case = load_case;
    state.scenario = scenario;
    return state;
}

/// Golden-section search between the neighbours of the best direction sampled. The top may be round, or a corner where
/// an anchor begins or ends to pull, with a hollow beside it: a parabola, or a search that follows the slope, stops
/// short of such a corner by up to 0.3 % of the tension (measured on the shipped details).
void add_peak(Demand& demand, MountSolver& solver, std::size_t anchor, LoadDuration duration) {
    const State best = demand.states[worst_state_of(demand, anchor, duration)];
    const std::vector<double>& directions = demand.cases[best.load_case].directions_rad;
    if (directions.size() < fewest_all_round) return;
    const double step_rad = directions[1] - directions[0];
    const double golden = 0.5 * (std::sqrt(5.0) - 1.0);
    constexpr double close_enough_rad = 1e-5;
    double low = best.direction_rad - step_rad;
    double high = best.direction_rad + step_rad;
    const auto at = [&](double direction) {
        return solve_state(demand, solver, best.load_case, best.scenario, direction);
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

}  // namespace toehold::demand
