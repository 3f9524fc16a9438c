// Shear along the grain of the block. Loads near the ends are counted in full: the ends hang on fasteners, so the
// relief NDS 2018 3.4.3.1 gives near a bearing does not apply.
#include "checks/anchor/anchor_seating.h"
#include "checks/basis/member_basis.h"
#include "checks/block/block_actions.h"
#include "demand/worst.h"
#include "resistance/wood/member_strength.h"

#include <cmath>

namespace toehold::checks {
namespace {

double stress_psi(const BlockActions& actions, const model::Block& block) {
    const double vertical = resistance::shear_stress_psi(actions.vertical_shear_lb, block.width_in, block.depth_in);
    const double sideways = resistance::shear_stress_psi(actions.horizontal_shear_lb, block.depth_in, block.width_in);
    return std::hypot(vertical, sideways);
}

CheckResult shear_of(const CheckInput& input, std::size_t index) {
    const model::Block& block = input.resolved.detail.framing.blocks[index];
    const double reference_psi = input.resolved.blocks.at(index).grade.shear_psi;
    const Adjusted adjusted = adjust_shear(reference_psi, input.resolved.detail.basis);
    const demand::Worst worst = demand::worst_state(input.demand, [&](const demand::State& state) {
        return stress_psi(block_actions(input, state, index), block);
    });
    const demand::State& state = input.demand.states[worst.state];
    const BlockActions actions = block_actions(input, state, index);
    CheckResult result;
    result.subject = subject(block);
    result.direction_deg = degrees(state.direction_rad);
    result.demand = worst.value;
    result.capacity = adjusted.value;
    result.unit = "psi";
    result.steps = {
        {"V_v", "largest vertical shear", "simple beam", actions.vertical_shear_lb, "lb", "demand"},
        {"V_h", "largest horizontal shear", "simple beam", actions.horizontal_shear_lb, "lb", "demand"},
        {"A", "section", "b d", block.width_in * block.depth_in, "in2", "input"},
        {"f_v", "shear stress, both together", "1.5 sqrt(V_v^2 + V_h^2)/A", worst.value, "psi", "NDS 2018 Eq. 3.4-2"}};
    append(result.steps, allowable_shear_steps(reference_psi, adjusted));
    conclude(result);
    return result;
}

std::vector<CheckResult> block_shear(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_blocks(input)) results.push_back(shear_of(input, index));
    return results;
}

const RegisterCheck registered{{"block-shear", "Shear in the block", "NDS 2018 3.4.2",
                                "Shear along the grain of the block as a simple beam between its joists.",
                                block_shear}};

}  // namespace
}  // namespace toehold::checks
