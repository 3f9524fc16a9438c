#include "demand/plate_on_deck/envelope.h"

#include "mechanics/rigid_plate/anchor_group.h"

#include <algorithm>
#include <numbers>

namespace toehold::demand {
namespace {

/// Directions a paper calculation looks at: square to the plate's sides, as far as the loads ask for them. Turned by a
/// few degrees, the method would put the whole moment on one anchor.
std::vector<double> hand_directions(const LoadCase& load) {
    constexpr double quarter = 0.5 * std::numbers::pi;
    if (load.directions_rad.size() <= 2) return load.directions_rad;
    return {0.0, quarter, 2.0 * quarter, 3.0 * quarter};
}

void add_hand_tensions(Demand& demand, const PlateSolver& solver, const model::BaseDetail& detail) {
    using mechanics::hand_tension;
    using mechanics::LeverArm;
    const mechanics::Polygon plate = outline(on_deck(detail).plate);
    for (const LoadCase& load : demand.cases) {
        for (const double direction : hand_directions(load)) {
            const ActingLoad push = acting_load(load, direction);
            const double moment = push.push_lb * push.height_in;
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

double sum(const std::vector<double>& values) {
    double total = 0.0;
    for (const double value : values) total += value;
    return total;
}

double sum_of_tensions(const State& state) {
    double total = 0.0;
    for (const AnchorForce& anchor : state.anchors) total += anchor.tension_lb;
    return total;
}

/// The smaller of what is known and this moment over this rotation; 0: nothing known yet.
void keep_softest(double& softest, double moment_lb_in, double rotation_rad) {
    if (!(moment_lb_in > 0.0) || !(rotation_rad > 0.0)) return;
    const double stiffness = moment_lb_in / rotation_rad;
    if (softest == 0.0 || stiffness < softest) softest = stiffness;
}

double largest_pull(const Demand& demand, bool flexible_framing) {
    double largest = 0.0;
    for (const State& state : demand.states) {
        const StiffnessScenario& scenario = demand.scenarios[state.scenario];
        if (!scenario.central() || scenario.flexible_framing != flexible_framing) continue;
        for (const AnchorForce& anchor : state.anchors) largest = std::max(largest, anchor.tension_lb);
    }
    return largest;
}

Bending find_bending(const Demand& demand) {
    Bending bending;
    const double still = largest_pull(demand, false), giving = largest_pull(demand, true);
    if (still > 0.0 && giving > 0.0) bending.framing_change = giving / still - 1.0;
    double largest = 0.0;
    for (const State& state : demand.states) {
        const ActingLoad load = acting_load(demand, state);
        // A vertical force moves the foot too, so only the push alone tells its rotation stiffness.
        if (!demand.scenarios[state.scenario].nominal() || load.down_lb != 0.0) continue;
        const double moment = load.push_lb * load.height_in;
        keep_softest(bending.softest_lb_in_per_rad, moment, state.rotation_rad);
        keep_softest(bending.rigid_softest_lb_in_per_rad, moment, state.rigid_rotation_rad);
        const double total = sum_of_tensions(state), rigid = sum(state.rigid_tension_lb);
        if (total <= largest || rigid <= 0.0) continue;
        largest = total;
        bending.prying = total / rigid - 1.0;
        bending.prying_direction_rad = state.direction_rad;
    }
    return bending;
}

}  // namespace

void add_plate_envelopes(Demand& demand, const PlateSolver& solver, const model::BaseDetail& detail) {
    add_hand_tensions(demand, solver, detail);
    if (solver.flexible()) demand.bending = find_bending(demand);
}

}  // namespace toehold::demand
