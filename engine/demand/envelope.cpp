#include "demand/envelope.h"

#include "demand/loads/code_loads.h"

#include <algorithm>
#include <cmath>

namespace toehold::demand {
namespace {

double tension_lb(const Demand& demand, std::size_t state, std::size_t anchor) {
    return demand.states[state].anchors[anchor].tension_lb;
}

/// Smallest, over the scenarios, of the largest tension; and what each kind of plate gives at the nominal stiffness.
void find_range(const Demand& demand, bool flexible, std::size_t anchor, AnchorEnvelope& envelope) {
    std::vector<double> largest(demand.scenarios.size(), 0.0);
    double nominal = 0.0;
    for (const State& state : demand.states) {
        const double tension = state.anchors[anchor].tension_lb;
        largest[state.scenario] = std::max(largest[state.scenario], tension);
        if (!demand.scenarios[state.scenario].nominal()) continue;
        nominal = std::max(nominal, tension);
        envelope.rigid_tension_lb = std::max(envelope.rigid_tension_lb, state.rigid_tension_lb[anchor]);
    }
    envelope.tension_low_lb = *std::min_element(largest.begin(), largest.end());
    if (flexible) envelope.flexible_tension_lb = nominal;
}

/// The anchor's largest tension under a push at the top of the guard alone, in proportion to a push of the proof level.
double proof_tension_lb(const Demand& demand, std::size_t anchor) {
    double largest = 0.0;
    const double top_in = demand.cases.front().height_in;
    for (const State& state : demand.states) {
        const LoadCase& load = demand.cases[state.load_case];
        if (load.height_in != top_in || load.down_lb != 0.0 || load.wind_lb != 0.0 || !(load.push_lb > 0.0)) continue;
        largest = std::max(largest, state.anchors[anchor].tension_lb / load.push_lb);
    }
    return largest * proof_factor * code_concentrated_lb;
}

/// What the states say of the anchor.
void find_envelope(const Demand& demand, bool flexible, std::size_t anchor, AnchorEnvelope& envelope) {
    envelope.state = worst_state_of(demand, anchor);
    const State& worst = demand.states[envelope.state];
    envelope.tension_lb = worst.anchors[anchor].tension_lb;
    envelope.direction_rad = worst.direction_rad;
    envelope.proof_tension_lb = proof_tension_lb(demand, anchor);
    envelope.shear_lb = envelope.rigid_tension_lb = 0.0;
    for (const State& state : demand.states)
        envelope.shear_lb = std::max(envelope.shear_lb, state.anchors[anchor].shear_lb());
    find_range(demand, flexible, anchor, envelope);
}

void find_peak_bearing(Demand& demand) {
    demand.peak_bearing_psi = 0.0;
    demand.peak_bearing_state = 0;
    for (std::size_t state = 0; state < demand.states.size(); ++state) {
        for (const SupportForce& support : demand.states[state].supports) {
            if (support.peak_psi <= demand.peak_bearing_psi) continue;
            demand.peak_bearing_psi = support.peak_psi;
            demand.peak_bearing_state = state;
        }
    }
}

}  // namespace

std::size_t worst_state_of(const Demand& demand, std::size_t anchor) {
    std::size_t worst = 0;
    for (std::size_t state = 1; state < demand.states.size(); ++state) {
        if (tension_lb(demand, state, anchor) > tension_lb(demand, worst, anchor)) worst = state;
    }
    return worst;
}

std::size_t worst_state_of(const Demand& demand, std::size_t anchor, LoadDuration duration) {
    std::optional<std::size_t> worst;
    for (std::size_t state = 0; state < demand.states.size(); ++state) {
        if (demand.cases[demand.states[state].load_case].duration != duration) continue;
        if (!worst || tension_lb(demand, state, anchor) > tension_lb(demand, *worst, anchor)) worst = state;
    }
    return worst.value();
}

void find_envelopes(Demand& demand, const MountSolver& solver) {
    demand.anchors.clear();
    const std::size_t anchors = solver.anchor_stiffnesses().size();
    for (std::size_t anchor = 0; anchor < anchors; ++anchor) {
        const Stiffness& stiffness = solver.anchor_stiffnesses()[anchor];
        AnchorEnvelope envelope;
        envelope.stiffness_lb_per_in = stiffness.value;
        envelope.stiffness_source = stiffness.source;
        find_envelope(demand, solver.flexible(), anchor, envelope);
        demand.anchors.push_back(envelope);
    }
    find_peak_bearing(demand);
}

void find_envelopes_again(Demand& demand) {
    for (std::size_t anchor = 0; anchor < demand.anchors.size(); ++anchor) {
        AnchorEnvelope& envelope = demand.anchors[anchor];
        find_envelope(demand, envelope.flexible_tension_lb.has_value(), anchor, envelope);
    }
    find_peak_bearing(demand);
}

RotationalStiffness find_rotational_stiffness(const Demand& demand) {
    RotationalStiffness stiffness;
    for (const State& state : demand.states) {
        const ActingLoad load = acting_load(demand, state);
        // A vertical force moves the foot too, so only a push alone tells its stiffness.
        if (!demand.scenarios[state.scenario].nominal() || load.down_lb != 0.0) continue;
        const double moment = load.push_lb * load.height_in;
        if (moment > 0.0 && state.rotation_rad > 0.0) stiffness.add({state.direction_rad, moment / state.rotation_rad});
    }
    return stiffness;
}

}  // namespace toehold::demand
