// The plate's toe presses, through the decking and without counting any spread in it, on the block, joist or rim below.
#include "checks/anchor/anchor_seating.h"
#include "checks/basis/member_basis.h"
#include "checks/registry.h"
#include "demand/worst.h"

namespace toehold::checks {
namespace {

CheckResult bearing_on(const CheckInput& input, std::size_t index, const catalog::MemberMaterial& wood) {
    const demand::Support& support = input.demand.supports[index];
    const demand::Worst worst = demand::worst_state(
        input.demand, [&](const demand::State& state) { return state.supports.at(index).peak_psi; });
    const Adjusted adjusted = adjust_compression_perp(wood.grade.compression_perp_psi, input.resolved.detail.basis);
    CheckResult result;
    result.subject = model::subject(model::member(input.resolved.detail.framing, support.member));
    result.demand = worst.value;
    result.capacity = adjusted.value;
    result.unit = "psi";
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.link = Link{input.resolved.decking ? "decking" : "plate", result.subject, "bearing"};
    result.steps = {{"f_c,perp", "largest pressure under the plate here", "demand", worst.value, "psi", "demand"},
                    {"F_c,perp", "reference compression across the grain, " + wood.species.name + " " + wood.grade.name,
                     "given", wood.grade.compression_perp_psi, "psi", wood.grade.source.text}};
    append(result.steps, adjusted.steps);
    result.steps.push_back({"F_c,perp'", "allowable pressure", "F_c,perp times every factor; C_b taken as 1.0",
                            adjusted.value, "psi", ""});
    conclude(result);
    result.note =
        "Largest pressure at the plate's edge, not the mean over the contact; no spread through the layers above.";
    return result;
}

std::vector<CheckResult> bearing_framing(const CheckInput& input) {
    std::vector<CheckResult> results;
    if (input.demand.states.empty()) return results;
    for (std::size_t index = 0; index < input.demand.supports.size(); ++index) {
        const demand::Support& support = input.demand.supports[index];
        if (support.kind != demand::SupportKind::member) continue;
        results.push_back(bearing_on(input, index, catalog::wood(input.resolved, support.member)));
    }
    return results;
}

const RegisterCheck registered{
    {"bearing-framing", "Bearing of the plate on the framing", "NDS 2018 3.10.2",
     "Largest pressure under the plate against the wood of the block, joist or rim below, across "
     "its grain.",
     bearing_framing}};

}  // namespace
}  // namespace toehold::checks
