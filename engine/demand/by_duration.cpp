#include "demand/by_duration.h"

#include "demand/envelope.h"
#include "model/basis.h"

#include <algorithm>

namespace toehold::demand {

std::vector<LoadDuration> durations(const Demand& demand) {
    std::vector<LoadDuration> all;
    for (const State& state : demand.states) {
        const LoadDuration one = demand.cases.at(state.load_case).duration;
        if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(one);
    }
    return all;
}

Demand without_states(const Demand& demand) {
    Demand part;
    part.cases = demand.cases;
    part.scenarios = demand.scenarios;
    part.bed_range = demand.bed_range;
    part.anchor_range = demand.anchor_range;
    part.supports = demand.supports;
    part.anchors = demand.anchors;
    part.rotational_stiffness = demand.rotational_stiffness;
    part.bending = demand.bending;
    part.assumptions = demand.assumptions;
    part.proof = demand.proof;
    if (!demand.framing) return part;
    FramingDemand& framing = part.framing.emplace();
    framing.supports = demand.framing->supports;
    framing.unstable = demand.framing->unstable;
    framing.deck = demand.framing->deck;
    framing.joists_described = demand.framing->joists_described;
    framing.residual = demand.framing->residual;
    framing.assumptions = demand.framing->assumptions;
    return part;
}

Demand of_duration(const Demand& demand, LoadDuration duration) {
    Demand part = without_states(demand);
    const bool framed = demand.framing && !demand.framing->states.empty();
    for (std::size_t index = 0; index < demand.states.size(); ++index) {
        if (demand.cases.at(demand.states[index].load_case).duration != duration) continue;
        part.states.push_back(demand.states[index]);
        if (framed) part.framing->states.push_back(demand.framing->states[index]);
    }
    if (part.states.empty()) return part;
    find_envelopes_again(part);
    return part;
}

model::Basis for_duration(model::Basis basis, LoadDuration duration) {
    if (duration == LoadDuration::guard_live) return basis;
    constexpr double ten_minutes = 1.6, not_live_alone = 1.0;
    basis.load_duration = ten_minutes;
    basis.time_effect = not_live_alone;
    return basis;
}

}  // namespace toehold::demand
