// An anchor's own steel in shear, threads in the shear plane: AISC 360-16 J3.6.
#include "checks/anchor/anchor_seating.h"
#include "checks/anchor/anchor_steel.h"
#include "demand/worst.h"

namespace toehold::checks {
namespace {

CheckResult shear(const CheckInput& input, std::size_t index) {
    CheckResult result = anchor_steel_result(input, index, "shank in shear");
    const Capacity steel = anchor_shear(input.resolved.anchors[index], input.resolved.detail.basis);
    const demand::Worst worst = demand::worst_state(
        input.demand, [&](const demand::State& state) { return state.anchors.at(index).shear_lb(); });
    result.unit = "lb";
    result.demand = worst.value;
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    if (!take_capacity(result, steel)) return result;
    result.steps.push_back({"V", "largest shear", "demand", result.demand, "lb", "demand"});
    conclude(result);
    return result;
}

std::vector<CheckResult> anchor_steel_shear(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        // A report's lateral value covers the steel; the lateral check reads it.
        if (input.resolved.anchors[index].kind != catalog::FastenerKind::reported)
            results.push_back(shear(input, index));
    }
    return results;
}

const RegisterCheck registered{{"anchor-steel-shear", "Anchor's steel in shear", "AISC 360-16 J3.6",
                                "The shank or thread of each anchor against its largest shear, threads in the plane.",
                                anchor_steel_shear}};

}  // namespace
}  // namespace toehold::checks
