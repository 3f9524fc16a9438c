#include "checks/block/block_end.h"

#include "checks/anchor/anchor_seating.h"

#include <limits>
#include <utility>

namespace toehold::checks {

const model::Block& block_at(const CheckInput& input, const BlockEndPlace& place) {
    return input.resolved.detail.framing.blocks.at(place.block);
}

const model::BlockEnd& end_at(const CheckInput& input, const BlockEndPlace& place) {
    const model::Block& block = block_at(input, place);
    return place.upper ? block.to_end : block.from_end;
}

EndForces forces_at(const CheckInput& input, const demand::State& state, const BlockEndPlace& place) {
    const BlockActions actions = block_actions(input, state, place.block);
    return place.upper ? actions.to : actions.from;
}

CheckResult end_result(const CheckInput& input, const BlockEndPlace& place, std::string by) {
    const std::string& joist = end_at(input, place).joist;
    const std::string block = subject(block_at(input, place));
    const std::string to = joist.empty() ? "joist not described" : "joist " + joist;
    CheckResult result;
    result.subject = block + (joist.empty() ? std::string(place.upper ? ", upper end" : ", lower end") : " at " + to);
    result.link = Link{block, to, std::move(by)};
    return result;
}

void add_end_forces(CheckResult& result, const CheckInput& input, const BlockEndPlace& place, std::size_t state) {
    const demand::State& governing = input.demand.states.at(state);
    const EndForces forces = forces_at(input, governing, place);
    result.direction_deg = degrees(governing.direction_rad);
    result.steps.push_back(
        {"R_v", "vertical force on this end, up positive", "simple beam", forces.up_lb, "lb", "demand"});
    result.steps.push_back(
        {"R_h", "horizontal force across the block", "simple beam", forces.across_lb, "lb", "demand"});
    result.steps.push_back({"T", "torque about the block's axis", "share by place along the block", forces.torque_lb_in,
                            "lb in", "demand"});
    result.steps.push_back({"P_a", "push along the block: borne by the joist it pushes to, not by fasteners", "sum",
                            block_actions(input, governing, place.block).along_lb, "lb", "assumption"});
}

void nothing_resists(CheckResult& result, double demand, std::string unit, std::string why) {
    result.demand = demand;
    result.capacity = 0.0;
    result.unit = std::move(unit);
    result.ratio = std::numeric_limits<double>::infinity();
    result.status = Status::no_path;
    result.note = std::move(why);
}

}  // namespace toehold::checks
