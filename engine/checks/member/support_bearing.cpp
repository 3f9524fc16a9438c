// A joist pressed down on a beam or a wall bears on it across its grain.
#include "checks/basis/member_basis.h"
#include "checks/basis/result_parts.h"
#include "checks/member/end_place.h"

#include <algorithm>

namespace toehold::checks {
namespace {

CheckResult bearing(const CheckInput& input, const EndPlace& place, const demand::Worst& worst) {
    const model::JoistSupport& support = input.resolved.detail.framing.supports.at(place.hold->support.value());
    const Adjusted adjusted =
        adjust_compression_perp(place.wood->grade.compression_perp_psi, input.resolved.detail.basis);
    const double area_in2 = place.member.width_in * support.bearing_in;
    CheckResult result = end_result(input, place, worst.state, "bearing");
    if (!(area_in2 > 0.0)) {
        nothing_resists(result, worst.value, "lb",
                        "No length of bearing is described: the joist has nothing to lie on.");
        return result;
    }
    result.demand = worst.value / area_in2;
    result.capacity = adjusted.value;
    result.unit = "psi";
    result.steps = {
        {"R", "force down on the beam", "framing", worst.value, "lb", "demand"},
        {"A_b", "bearing area", "joist's width times length of bearing", area_in2, "in2", "input"},
        {"f_c,perp", "pressure", "R/A_b", result.demand, "psi", "NDS 2018 3.10.2"},
        {"F_c,perp",
         "reference compression across the grain, " + place.wood->species.name + " " + place.wood->grade.name, "given",
         place.wood->grade.compression_perp_psi, "psi", place.wood->grade.source.text}};
    append(result.steps, adjusted.steps);
    result.steps.push_back({"F_c,perp'", "allowable pressure", "F_c,perp times every factor; C_b taken as 1.0",
                            adjusted.value, "psi", ""});
    conclude(result);
    result.note = "The guard's load alone, without the deck's own; the beam's wood is not described and not checked.";
    return result;
}

std::vector<CheckResult> support_bearing(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const EndPlace& place : end_places(input)) {
        if (!place.on_beam) continue;
        const demand::Worst worst =
            worst_at(input, place, [](const demand::HoldForces& forces) { return -forces.up_lb; });
        if (worst.value > no_force_lb) results.push_back(bearing(input, place, worst));
    }
    return results;
}

const RegisterCheck registered{{"support-bearing", "Bearing of the joist on its beam", "NDS 2018 3.10.2",
                                "Largest force down at each beam against the joist's wood, across its grain.",
                                support_bearing}};

}  // namespace
}  // namespace toehold::checks
