// An anchor's own steel in tension: AISC 360-16 J3.6 (check values: Table J3.2 of AISC 360-10).
#include "checks/anchor/anchor_seating.h"
#include "checks/anchor/anchor_steel.h"

namespace toehold::checks {
namespace {

CheckResult tension(const CheckInput& input, std::size_t index) {
    const demand::AnchorEnvelope& envelope = input.demand.anchors.at(index);
    CheckResult result = anchor_steel_result(input, index, "shank in tension");
    const Capacity steel = anchor_tension(input.resolved.anchors[index], input.resolved.detail.basis);
    result.unit = "lb";
    result.demand = envelope.tension_lb;
    result.direction_deg = degrees(envelope.direction_rad);
    if (!take_capacity(result, steel)) return result;
    result.steps.push_back({"T", "largest tension", "demand", result.demand, "lb", "demand"});
    conclude(result);
    return result;
}

std::vector<CheckResult> anchor_steel_tension(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index)
        results.push_back(tension(input, index));
    return results;
}

const RegisterCheck registered{{"anchor-steel-tension", "Anchor's steel in tension", "AISC 360-16 J3.6",
                                "The shank or thread of each anchor against its largest tension, wood left aside.",
                                anchor_steel_tension}};

}  // namespace
}  // namespace toehold::checks
