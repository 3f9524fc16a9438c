// An anchor's own steel in tension and shear at once: AISC 360-16 J3.7, written as one ratio. Both forces are of the
// same push. A reported fastener: T/Ta + V/Va <= 1, on the safe side where its report says nothing (common practice).
#include "checks/anchor/anchor_seating.h"
#include "checks/anchor/anchor_steel.h"
#include "checks/basis/wood_basis.h"
#include "demand/worst.h"
#include "resistance/steel/bolt.h"

#include <utility>

namespace toehold::checks {
namespace {

namespace steel = resistance::steel;

struct Pair {
    Capacity tension, shear;
    bool reported = false;
};

Pair capacities(const catalog::Anchor& anchor, const model::Basis& basis) {
    if (anchor.kind != catalog::FastenerKind::reported)
        return {anchor_tension(anchor, basis), anchor_shear(anchor, basis), false};
    Capacity lateral{0.0, "report", {}, "no lateral value"};
    if (anchor.reported && anchor.reported->lateral_lb > 0.0) {
        Adjusted allowable = reported_value(anchor.reported->lateral_lb, "lb", basis);
        lateral = {allowable.value, "report: " + anchor.reported->report, std::move(allowable.steps), {}};
    }
    return {anchor_tension(anchor, basis), lateral, true};
}

double ratio(const Pair& pair, const demand::AnchorForce& force) {
    const double tension = force.tension_lb / pair.tension.value;
    const double shear = force.shear_lb() / pair.shear.value;
    return pair.reported ? tension + shear : steel::combined_ratio(tension, shear);
}

void add_steps(CheckResult& result, const Pair& pair, const demand::AnchorForce& force) {
    const std::string pattern = pair.reported ? "report" : "AISC 360-16 J3.6";
    result.steps = {{"T", "tension in that push", "demand", force.tension_lb, "lb", "demand"},
                    {"V", "shear in the same push", "demand", force.shear_lb(), "lb", "demand"},
                    {"T_c", "usable tension alone", "as in the check of tension", pair.tension.value, "lb", pattern},
                    {"V_c", "usable shear alone", pair.reported ? "lateral value" : "as in the check of shear",
                     pair.shear.value, "lb", pattern},
                    {"r", "share of the strength used",
                     pair.reported ? "T/T_c + V/V_c" : "the largest of T/T_c, V/V_c and (T/T_c + V/V_c)/1.3",
                     result.demand, "", pair.reported ? "common practice" : "AISC 360-16 Eq. J3-3a, J3-3b as a ratio"}};
}

CheckResult combined(const CheckInput& input, std::size_t index, const Pair& pair) {
    CheckResult result = anchor_steel_result(input, index, "shank in tension and shear");
    const demand::Worst worst = demand::worst_state(
        input.demand, [&](const demand::State& state) { return ratio(pair, state.anchors.at(index)); });
    const demand::State& state = input.demand.states.at(worst.state);
    if (pair.reported) result.clause = "common practice";
    result.demand = worst.value;
    result.capacity = 1.0;
    result.direction_deg = degrees(state.direction_rad);
    add_steps(result, pair, state.anchors.at(index));
    conclude(result);
    return result;
}

std::vector<CheckResult> anchor_steel_combined(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const Pair pair = capacities(input.resolved.anchors[index], input.resolved.detail.basis);
        // Where either is missing, the check of that force alone says so.
        if (pair.tension.missing.empty() && pair.shear.missing.empty()) results.push_back(combined(input, index, pair));
    }
    return results;
}

const RegisterCheck registered{{"anchor-steel-combined", "Anchor's steel in tension and shear", "AISC 360-16 J3.7",
                                "Tension and shear of the same push together on the steel of each anchor.",
                                anchor_steel_combined}};

}  // namespace
}  // namespace toehold::checks
