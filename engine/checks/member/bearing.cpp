// Pressure across the grain of a member: the plate's toe presses, through the decking and without counting any spread
// in it, on the block, joist or rim below; a joist pressed down on a beam or a wall bears on it.
#include "catalog/resolve.h"
#include "checks/basis/wood_basis.h"
#include "checks/connection/connection.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;

CheckResult bearing_on(const CheckInput& input, std::size_t index, const catalog::MemberMaterial& wood) {
    const demand::Support& support = input.demand.supports[index];
    const demand::GoverningState worst = demand::governing_state(
        input.demand, [&](const demand::State& state) { return state.supports.at(index).peak_psi; });
    const Adjusted adjusted = adjust_compression_perp(wood.grade.compression_perp_psi, input.resolved.detail.basis);
    CheckResult result;
    result.part = model::part_of(model::member(input.resolved.detail.framing, support.member));
    result.demand = worst.value;
    result.capacity = adjusted.value;
    result.unit = "psi";
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.link =
        link_between({model::deck_boards(input.resolved.detail) ? model::PartKind::decking : model::PartKind::plate},
                     result.part, phrase("bearing"));
    result.steps = {
        demanded("f_c,perp", phrase("largest pressure under the plate here"), worst.value, "psi"),
        given("F_c,perp",
              phrase("reference compression perpendicular to grain, {} {}", wood.species.name, wood.grade.name),
              wood.grade.compression_perp_psi, "psi", wood.grade.source.text)};
    append(result.steps, adjusted.steps);
    result.steps.push_back({"F_c,perp'", phrase("allowable pressure"), "F_c,perp times every factor; C_b taken as 1.0",
                            adjusted.value, "psi", ""});
    conclude(result);
    result.note = phrase(
        "The largest pressure at the plate's edge, not the mean over the contact, and without spread "
        "through the layers above.");
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

CheckResult bearing_on_beam(const CheckInput& input, const EndPlace& place, const demand::GoverningState& worst) {
    const model::JoistSupport& support =
        input.resolved.detail.framing.supports.at(place.support->joist_support.value());
    const Adjusted adjusted =
        adjust_compression_perp(place.wood->grade.compression_perp_psi, input.resolved.detail.basis);
    const double area_in2 = place.member.width_in * support.bearing_in;
    CheckResult result = end_result(input, place, worst.state, phrase("bearing"));
    if (!(area_in2 > 0.0)) {
        nothing_resists(result, worst.value, "lb",
                        phrase("The bearing length of the joist on its beam is not specified. Give it."));
        return result;
    }
    result.demand = worst.value / area_in2;
    result.capacity = adjusted.value;
    result.unit = "psi";
    result.steps = {
        {"R", phrase("downward force on the beam"), "framing", worst.value, "lb", "demand", Origin::demanded},
        {"A_b", phrase("bearing area"), "joist width times bearing length", area_in2, "in2", "input"},
        {"f_c,perp", phrase("pressure"), "R/A_b", result.demand, "psi", "NDS 2018 3.10.2"},
        given("F_c,perp",
              phrase("reference compression perpendicular to grain, {} {}", place.wood->species.name,
                     place.wood->grade.name),
              place.wood->grade.compression_perp_psi, "psi", place.wood->grade.source.text)};
    append(result.steps, adjusted.steps);
    result.steps.push_back({"F_c,perp'", phrase("allowable pressure"), "F_c,perp times every factor; C_b taken as 1.0",
                            adjusted.value, "psi", ""});
    conclude(result);
    result.note = phrase("The guard load alone, without deck loads. The beam's wood is not specified and not checked.");
    return result;
}

std::vector<CheckResult> support_bearing(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const EndPlace& place : end_places(input)) {
        if (!place.on_beam) continue;
        const demand::GoverningState worst =
            governing_at(input, place, [](const demand::SupportReaction& forces) { return -forces.up_lb; });
        if (worst.value > no_force_lb) results.push_back(bearing_on_beam(input, place, worst));
    }
    return results;
}

const RegisterCheck framing_check{{"bearing-framing", phrase("Framing bearing under the plate"), "NDS 2018 3.10.2",
                                   phrase("The largest pressure under the plate against the wood of the block, joist "
                                          "or rim below, perpendicular to grain."),
                                   bearing_framing}};
const RegisterCheck support_check{
    {"support-bearing", phrase("Joist bearing on the beam"), "NDS 2018 3.10.2",
     phrase("The largest downward force at each beam against the joist's wood, perpendicular to grain."),
     support_bearing}};

}  // namespace
}  // namespace toehold::checks
