// A wood post pressed on the member's face, across its own grain: the couple's other half. What is held to F_c,perp' is
// the uniform stress about the resultant, as on framing (checks/member/plate_pressure.h), with the elastic peak and the
// mean beside it; C_b where the block of stress is short and clear of the post's lower end (NDS 2018 3.10.4).
#include "catalog/resolve.h"
#include "checks/basis/wood_basis.h"
#include "checks/member/plate_pressure.h"
#include "demand/governing_state.h"
#include "resistance/wood/member_factors.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;

double length_factor_on_post(const CheckInput& input, const PlatePressure& pressure) {
    if (!pressure.block) return 1.0;
    constexpr double shortest_in = 0.5;  // the table's first row
    const double to_end_in = pressure.from_in + on_side(input.resolved.detail).post_bottom_below_top_in;
    return resistance::bearing_area_factor(std::max(pressure.length_in(), shortest_in), to_end_in);
}

CheckResult pressed_post(const CheckInput& input, std::size_t index, const catalog::LumberGrade& grade) {
    const demand::Support& support = input.demand.supports[index];
    const PressedPatch patch = pressed_patch(input, index, model::PlanAxis::y);
    const demand::GoverningState worst = demand::governing_state(input.demand, [&](const demand::State& state) {
        const PlatePressure pressure = plate_pressure(patch, state.supports.at(index));
        return pressure.stress_psi / length_factor_on_post(input, pressure);
    });
    const demand::State& state = input.demand.states.at(worst.state);
    const demand::SupportForce& force = state.supports.at(index);
    const PlatePressure pressure = plate_pressure(patch, force);
    const double factor = length_factor_on_post(input, pressure);
    const Adjusted adjusted = adjust_compression_perp(grade, input.resolved.detail.basis);
    CheckResult result;
    result.part = {model::PartKind::post};
    result.direction_deg = degrees(state.direction_rad);
    result.link = link_between(result.part, support.part, phrase("bearing"));
    result.unit = "psi";
    result.demand = pressure.stress_psi;
    result.capacity = factor * adjusted.value;
    result.steps = pressure_steps(pressure, force, true);
    result.steps.push_back(given("F_c,perp", phrase("reference compression perpendicular to grain"),
                                 grade.compression_perp_psi, "psi", grade.source.text));
    append(result.steps, adjusted.steps);
    if (pressure.block)
        result.steps.push_back(
            {"l_b", phrase("length of that area along the post"), "", pressure.length_in(), "in", ""});
    result.steps.push_back({"C_b", phrase("bearing area factor"),
                            "(l_b + 3/8)/l_b where l_b < 6 in and 3 in from the post's lower end, else 1", factor, "",
                            "NDS 2018 3.10.4"});
    result.steps.push_back(
        {"F_c,perp'", phrase("allowable pressure"), "F_c,perp times every factor", result.capacity, "psi", ""});
    result.note = pressure_note(pressure, true);
    conclude(result);
    return result;
}

std::vector<CheckResult> post_pressed(const CheckInput& input) {
    std::vector<CheckResult> results;
    const bool wood = std::holds_alternative<model::WoodPost>(input.resolved.detail.post);
    if (!wood || !input.resolved.post_grade || input.demand.states.empty()) return results;
    for (std::size_t index = 0; index < input.demand.supports.size(); ++index) {
        if (presses_level(input.demand.supports[index]))
            results.push_back(pressed_post(input, index, *input.resolved.post_grade));
    }
    return results;
}

const RegisterCheck registered{
    {"side-post-bearing", phrase("Bearing across the post's grain"), "NDS 2018 3.10.2",
     phrase("The pressure between a wood post and the member's face against the post's wood, perpendicular to grain."),
     post_pressed},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
