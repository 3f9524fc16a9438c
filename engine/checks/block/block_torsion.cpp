// Forces beside the block's axis, and the push at its top, twist it. The twist's stress is largest at the middle of the
// longer side, where beam shear along that side acts too: the two are added.
#include "checks/anchor/anchor_seating.h"
#include "checks/basis/member_basis.h"
#include "checks/block/block_actions.h"
#include "demand/worst.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>

namespace toehold::checks {
namespace {

struct Stresses {
    double torsion_psi = 0.0;
    double shear_psi = 0.0;  ///< along the longer side
    [[nodiscard]] double together_psi() const { return torsion_psi + resistance::torsion_over_shear() * shear_psi; }
};

Stresses stresses(const BlockActions& actions, const model::Block& block) {
    const double along_longer_lb =
        block.depth_in >= block.width_in ? actions.vertical_shear_lb : actions.horizontal_shear_lb;
    return {resistance::torsion_stress_psi(actions.torque_lb_in, block.width_in, block.depth_in),
            resistance::shear_stress_psi(along_longer_lb, block.width_in, block.depth_in)};
}

std::vector<Step> demand_steps(const BlockActions& actions, const model::Block& block, const Stresses& worst) {
    const double longer = std::max(block.width_in, block.depth_in);
    const double shorter = std::min(block.width_in, block.depth_in);
    return {{"T", "largest torque: forces times their distance from the axis, horizontal forces at the top", "statics",
             actions.torque_lb_in, "lb in", "demand"},
            {"k", "torsion coefficient", "by a/b, a the longer side", resistance::torsion_coefficient(longer / shorter),
             "", "Saint-Venant"},
            {"tau", "torsional stress", "T/(k a b^2)", worst.torsion_psi, "psi", "Saint-Venant"},
            {"f_v", "beam shear along the longer side", "1.5 V/A", worst.shear_psi, "psi", "NDS 2018 Eq. 3.4-2"},
            {"tau + 2/3 f_v", "both together", "so that tau/(2/3 F_v') + f_v/F_v' <= 1", worst.together_psi(), "psi",
             "common practice"}};
}

CheckResult torsion_of(const CheckInput& input, std::size_t index) {
    const model::Block& block = input.resolved.detail.framing.blocks[index];
    const double reference_psi = input.resolved.blocks.at(index).grade.shear_psi;
    const Adjusted adjusted = adjust_shear(reference_psi, input.resolved.detail.basis);
    const demand::Worst worst = demand::worst_state(input.demand, [&](const demand::State& state) {
        return stresses(block_actions(input, state, index), block).together_psi();
    });
    const demand::State& state = input.demand.states[worst.state];
    const BlockActions actions = block_actions(input, state, index);
    CheckResult result;
    result.subject = subject(block);
    result.direction_deg = degrees(state.direction_rad);
    result.demand = worst.value;
    result.capacity = resistance::torsion_over_shear() * adjusted.value;
    result.unit = "psi";
    result.steps = demand_steps(actions, block, stresses(actions, block));
    append(result.steps, allowable_shear_steps(reference_psi, adjusted));
    result.steps.push_back({"F_t", "allowable torsional stress", "2/3 F_v'", result.capacity, "psi",
                            "common practice; Wood Handbook 2010 ch. 5"});
    conclude(result);
    return result;
}

std::vector<CheckResult> block_torsion(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_blocks(input)) results.push_back(torsion_of(input, index));
    return results;
}

const RegisterCheck registered{{"block-torsion", "Torsion of the block", "common practice",
                                "Twist of the block between its ends from forces beside its axis, with beam shear.",
                                block_torsion}};

}  // namespace
}  // namespace toehold::checks
