// Torsional stress is largest at the middle of a piece's longer side, where beam shear acts too: their parts of what is
// allowed are added. Shear across the other side is counted there as well, which is on the safe side.
#include "checks/basis/member_basis.h"
#include "checks/basis/result_parts.h"
#include "checks/member/member_stresses.h"
#include "checks/member/plies.h"
#include "resistance/wood/member_strength.h"

namespace toehold::checks {
namespace {

CheckResult together_of(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    const double reference_psi = catalog::wood(input.resolved, index).grade.shear_psi;
    const Adjusted adjusted = adjust_shear(reference_psi, input.resolved.detail.basis);
    const demand::Worst worst = worst_actions(input, index, [&](const demand::MemberActions& actions) {
        const MemberStresses stresses = member_stresses(actions, member);
        return resistance::shear_torsion_ratio(stresses.shear_psi, stresses.torsion_psi, adjusted.value);
    });
    const demand::MemberActions& actions = actions_of(input, worst.state, index);
    CheckResult result =
        member_result(input, member, worst.state, std::string("shear and torsion of the ") + model::name(member.kind));
    result.demand = worst.value;
    result.capacity = 1.0;
    result.steps = plies_steps(member);
    append(result.steps, shear_demand_steps(input, actions, member));
    append(result.steps, torsion_demand_steps(input, actions, member));
    append(result.steps, allowable_shear_steps(reference_psi, adjusted));
    result.steps.push_back(allowable_torsion_step(adjusted.value));
    result.steps.push_back({"R", "both together", "f_v/F_v' + tau/F_t'", worst.value, "", "common practice"});
    result.note = plies_note(member);
    conclude(result);
    return result;
}

std::vector<CheckResult> member_shear_torsion(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_members(input)) results.push_back(together_of(input, index));
    return results;
}

const RegisterCheck registered{{"member-shear-torsion", "Shear and torsion of the framing together", "common practice",
                                "Beam shear and twist of each block, joist and rim at the same place.",
                                member_shear_torsion}};

}  // namespace
}  // namespace toehold::checks
