#include "model/anchor.h"

namespace toehold::model {

PlanAxis runs_along(const LowerPlate& plate) { return plate.width_in >= plate.depth_in ? PlanAxis::x : PlanAxis::y; }

const LowerPlate* lower_plate(const AnchorGroup& group) {
    const auto* const bolt = std::get_if<ThroughBolt>(&group.fastener);
    return bolt == nullptr ? nullptr : std::get_if<LowerPlate>(&bolt->below);
}

}  // namespace toehold::model
