// Shear along the grain of a member. Loads near its ends are counted in full: block ends hang on fasteners, and a
// joist's loads may stand anywhere, so the relief NDS 2018 3.4.3.1 gives near a bearing is not taken.
#include "checks/basis/member_basis.h"
#include "checks/basis/result_parts.h"
#include "checks/member/member_stresses.h"
#include "checks/member/plies.h"

namespace toehold::checks {
namespace {

CheckResult shear_of(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    const double reference_psi = catalog::wood(input.resolved, index).grade.shear_psi;
    const Adjusted adjusted = adjust_shear(reference_psi, input.resolved.detail.basis);
    const demand::Worst worst = worst_actions(
        input, index, [&](const demand::MemberActions& actions) { return member_stresses(actions, member).shear_psi; });
    CheckResult result =
        member_result(input, member, worst.state, std::string("shear in the ") + model::name(member.kind));
    result.demand = worst.value;
    result.capacity = adjusted.value;
    result.unit = "psi";
    result.steps = plies_steps(member);
    append(result.steps, shear_demand_steps(input, actions_of(input, worst.state, index), member));
    append(result.steps, allowable_shear_steps(reference_psi, adjusted));
    result.note = plies_note(member);
    conclude(result);
    return result;
}

std::vector<CheckResult> member_shear(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_members(input)) results.push_back(shear_of(input, index));
    return results;
}

const RegisterCheck registered{{"member-shear", "Shear in the framing", "NDS 2018 3.4.2",
                                "Shear along the grain of each block, joist and rim that carries load.", member_shear}};

}  // namespace
}  // namespace toehold::checks
