// Forces beside a member's axis, the push at its top and what blocks hang on a joist's face twist it.
#include "checks/basis/member_basis.h"
#include "checks/basis/result_parts.h"
#include "checks/member/member_stresses.h"
#include "checks/member/plies.h"

namespace toehold::checks {
namespace {

CheckResult torsion_of(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    const double reference_psi = catalog::wood(input.resolved, index).grade.shear_psi;
    const Adjusted adjusted = adjust_shear(reference_psi, input.resolved.detail.basis);
    const demand::Worst worst = worst_actions(input, index, [&](const demand::MemberActions& actions) {
        return member_stresses(actions, member).torsion_psi;
    });
    const Step allowable = allowable_torsion_step(adjusted.value);
    CheckResult result =
        member_result(input, member, worst.state, std::string("torsion of the ") + model::name(member.kind));
    result.demand = worst.value;
    result.capacity = allowable.value;
    result.unit = "psi";
    result.steps = plies_steps(member);
    append(result.steps, torsion_demand_steps(input, actions_of(input, worst.state, index), member));
    append(result.steps, allowable_shear_steps(reference_psi, adjusted));
    result.steps.push_back(allowable);
    result.note = plies_note(member);
    conclude(result);
    return result;
}

std::vector<CheckResult> member_torsion(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_members(input)) results.push_back(torsion_of(input, index));
    return results;
}

const RegisterCheck registered{{"member-torsion", "Torsion of the framing", "common practice",
                                "Twist of each block, joist and rim from forces beside its axis.", member_torsion}};

}  // namespace
}  // namespace toehold::checks
