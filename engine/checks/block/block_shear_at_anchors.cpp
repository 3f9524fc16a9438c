// Screws that stop part way down pull on the upper part of the block only; below their points nothing but tension
// across the grain holds the rest to it. NDS 2018 3.4.3.3 answers with a reduced shear strength. The clause speaks of
// bolts and lag screws in general; taking it for screws pulled along their axis is on the safe side (assumption). A
// through-bolt takes hold of the whole depth.
#include "checks/anchor/anchor_seating.h"
#include "checks/basis/member_basis.h"
#include "checks/block/block_actions.h"
#include "demand/worst.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>

namespace toehold::checks {
namespace {

/// Down to where the anchor still holds: the end of its full thread, or the block's underside for a bolt.
double reached_in(const CheckInput& input, const catalog::Anchor& anchor) {
    if (anchor.kind == catalog::FastenerKind::through_bolt) return member_of(input.resolved, anchor).depth_in;
    return anchor.embedment_in - seating(input.resolved, anchor).tip_in_block_in;
}

bool stands_in(const catalog::Anchor& anchor, std::size_t block) {
    return lands(anchor) && anchor.seat->member == block;
}

/// The least of the block's anchors.
double least_reached_in(const CheckInput& input, std::size_t block) {
    double least = input.resolved.detail.framing.blocks[block].depth_in;
    for (const catalog::Anchor& anchor : input.resolved.anchors) {
        if (stands_in(anchor, block)) least = std::min(least, reached_in(input, anchor));
    }
    return least;
}

/// Shear of the anchors' pull alone: what presses down on the block does not close a crack across the grain for sure.
double pulled_shear_lb(const CheckInput& input, const demand::State& state, std::size_t block) {
    std::vector<BlockLoad> loads = block_loads(input, state, block);
    loads.erase(std::remove_if(loads.begin(), loads.end(), [](const BlockLoad& load) { return load.up_lb <= 0.0; }),
                loads.end());
    for (BlockLoad& load : loads) load.couple_lb_in = 0.0;
    return block_actions(std::move(loads), length_in(input.resolved.detail.framing.blocks[block])).vertical_shear_lb;
}

CheckResult shear_at_anchors(const CheckInput& input, std::size_t index) {
    const model::Block& block = input.resolved.detail.framing.blocks[index];
    const double reference_psi = input.resolved.blocks.at(index).grade.shear_psi;
    const Adjusted adjusted = adjust_shear(reference_psi, input.resolved.detail.basis);
    const double reached = least_reached_in(input, index);
    const demand::Worst worst = demand::worst_state(
        input.demand, [&](const demand::State& state) { return pulled_shear_lb(input, state, index); });
    CheckResult result;
    result.subject = subject(block);
    result.direction_deg = degrees(input.demand.states[worst.state].direction_rad);
    result.demand = worst.value;
    result.unit = "lb";
    result.capacity =
        resistance::shear_at_fasteners_lb(adjusted.value, block.width_in, block.depth_in, std::max(reached, 0.0));
    result.steps = {{"V", "largest shear of the anchors' pull alone", "simple beam", worst.value, "lb", "demand"},
                    {"b", "width of the block", "given", block.width_in, "in", "input"},
                    {"d", "depth of the block", "given", block.depth_in, "in", "input"},
                    {"d_e", "from the block's top to the end of the least anchor's full thread",
                     "length in the block less the tip", reached, "in", ""}};
    append(result.steps, allowable_shear_steps(reference_psi, adjusted));
    result.steps.push_back({"V_r'", "shear the block takes there", "2/3 F_v' b d_e (d_e/d)^2", result.capacity, "lb",
                            "NDS 2018 Eq. 3.4-6 (from memory, to be confirmed)"});
    conclude(result);
    return result;
}

std::vector<CheckResult> block_shear_at_anchors(const CheckInput& input) {
    std::vector<CheckResult> results;
    const auto& anchors = input.resolved.anchors;
    for (const std::size_t index : loaded_blocks(input)) {
        const bool held = std::any_of(anchors.begin(), anchors.end(),
                                      [&](const catalog::Anchor& anchor) { return stands_in(anchor, index); });
        if (held) results.push_back(shear_at_anchors(input, index));
    }
    return results;
}

const RegisterCheck registered{{"block-shear-at-anchors", "Shear of the block at its anchors", "NDS 2018 3.4.3.3",
                                "Wood below the points of short anchors may split off: the shear the block takes above "
                                "them.",
                                block_shear_at_anchors}};

}  // namespace
}  // namespace toehold::checks
