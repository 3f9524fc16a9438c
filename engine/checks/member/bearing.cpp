// Pressure across the grain of a member: the plate's toe presses, through the decking and without counting any spread
// in it, on the block, joist or rim below, a post on the face it is fastened to; a joist pressed down on a beam or a
// wall bears on it.
#include "catalog/resolve.h"
#include "checks/basis/wood_basis.h"
#include "checks/connection/connection.h"
#include "checks/member/plate_pressure.h"
#include "resistance/wood/member_factors.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;

/// Of the stress block on a member, NDS 2018 3.10.4; 1 where it is not known how far its end is.
double length_factor(const PlatePressure& pressure, const model::Member& member) {
    if (!pressure.block || !member.length_stated) return 1.0;
    constexpr double shortest_in = 0.5;  // the table's first row
    const double to_end_in = std::min(pressure.from_in - member.from_in, member.to_in - pressure.to_in);
    return resistance::bearing_area_factor(std::max(pressure.length_in(), shortest_in), to_end_in);
}

/// Of a joist on its beam.
double beam_length_factor(const model::Member& joist, const model::JoistSupport& beam) {
    if (!joist.length_stated || !(beam.bearing_in > 0.0)) return 1.0;
    const double to_end_in = std::min(beam.at_in - joist.from_in, joist.to_in - beam.at_in) - 0.5 * beam.bearing_in;
    return resistance::bearing_area_factor(beam.bearing_in, to_end_in);
}

Step length_factor_step(double factor) {
    return {"C_b",
            phrase("bearing area factor"),
            "(l_b + 3/8)/l_b where l_b < 6 in and 3 in from the end, else 1",
            factor,
            "",
            "NDS 2018 3.10.4"};
}

std::vector<Step> length_steps(const PlatePressure& pressure, double factor) {
    if (!pressure.block) return {length_factor_step(factor)};
    return {{"l_b", phrase("length of that area along the grain"), "", pressure.length_in(), "in", ""},
            length_factor_step(factor)};
}

bool on_framing(const demand::Support& support) {
    return support.kind == demand::SupportKind::member && !support.packing;  // packing: packing-seat
}

/// Of each support on framing, in order; of the others 0.
std::vector<std::size_t> find_pressed_states(const CheckInput& input) {
    std::vector<std::size_t> states;
    for (std::size_t index = 0; index < input.demand.supports.size(); ++index) {
        const demand::Support& support = input.demand.supports[index];
        states.push_back(0);
        if (!on_framing(support)) continue;
        const model::Member member = model::member(input.resolved.detail.framing, support.member);
        const PressedPatch patch = pressed_patch(input, index, member.along);
        const auto relative_psi = [&](const demand::State& state) {
            const PlatePressure pressure = plate_pressure(patch, state.supports.at(index));
            return pressure.stress_psi / length_factor(pressure, member);
        };
        states.back() = demand::governing_state(input.demand, relative_psi).state;
    }
    return states;
}

model::PartId presses_from(const model::BaseDetail& detail, bool level) {
    if (level) return model::main_part(detail);
    return {model::deck_boards(detail) ? model::PartKind::decking : model::PartKind::plate};
}

CheckResult bearing_on(const CheckInput& input, std::size_t index, const catalog::MemberMaterial& wood,
                       const demand::State& state) {
    const demand::Support& support = input.demand.supports[index];
    const model::Member member = model::member(input.resolved.detail.framing, support.member);
    const PlatePressure pressure = plate_pressure(pressed_patch(input, index, member.along), state.supports.at(index));
    const double factor = length_factor(pressure, member);
    const Adjusted adjusted = adjust_compression_perp(wood.grade, input.resolved.detail.basis);
    CheckResult result;
    result.part = model::part_of(member);
    result.demand = pressure.stress_psi;
    result.capacity = adjusted.value * factor;
    result.unit = "psi";
    result.direction_deg = degrees(state.direction_rad);
    const bool level = presses_level(support);
    if (level) result.title = phrase("Bearing of the post on the framing");
    result.link = link_between(presses_from(input.resolved.detail, level), result.part, phrase("bearing"));
    result.steps = pressure_steps(pressure, state.supports.at(index), level);
    result.steps.push_back(given(
        "F_c,perp", phrase("reference compression perpendicular to grain, {} {}", wood.species.name, wood.grade.name),
        wood.grade.compression_perp_psi, "psi", wood.grade.source.text));
    append(result.steps, adjusted.steps);
    append(result.steps, length_steps(pressure, factor));
    result.steps.push_back(
        {"F_c,perp'", phrase("allowable pressure"), "F_c,perp times every factor", result.capacity, "psi", ""});
    conclude(result);
    result.note =
        sentences(pressure_note(pressure, level), level ? phrase("No spread through the layers between is counted.")
                                                        : phrase("No spread through the layers above is counted."));
    return result;
}

struct UnderThePlate;

std::vector<CheckResult> bearing_framing(const CheckInput& input) {
    std::vector<CheckResult> results;
    if (input.demand.states.empty()) return results;
    const std::vector<std::size_t> states = pressed_states<UnderThePlate>(
        input, model::bearing_stress(input.resolved.detail.basis), [&] { return find_pressed_states(input); });
    for (std::size_t index = 0; index < input.demand.supports.size(); ++index) {
        const demand::Support& support = input.demand.supports[index];
        if (!on_framing(support)) continue;
        results.push_back(bearing_on(input, index, catalog::wood(input.resolved, support.member),
                                     input.demand.states.at(states.at(index))));
    }
    return results;
}

CheckResult bearing_on_beam(const CheckInput& input, const EndPlace& place, const demand::GoverningState& worst) {
    const model::JoistSupport& support =
        input.resolved.detail.framing.supports.at(place.support->joist_support.value());
    const Adjusted adjusted = adjust_compression_perp(place.wood->grade, input.resolved.detail.basis);
    const double area_in2 = place.member.width_in * support.bearing_in;
    CheckResult result = end_result(input, place, worst.state, phrase("bearing"));
    if (!(area_in2 > 0.0)) {
        nothing_resists(result, worst.value, "lb",
                        phrase("The bearing length of the joist on its beam is not specified. Give it."));
        return result;
    }
    const double factor = beam_length_factor(place.member, support);
    result.demand = worst.value / area_in2;
    result.capacity = adjusted.value * factor;
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
    result.steps.push_back(length_factor_step(factor));
    result.steps.push_back(
        {"F_c,perp'", phrase("allowable pressure"), "F_c,perp times every factor", result.capacity, "psi", ""});
    conclude(result);
    result.note = sentences(input.demand.framing->deck ? phrase("With the deck's load.")
                                                       : phrase("The guard load alone, without deck loads."),
                            phrase("The beam's wood is not specified and not checked."));
    return result;
}

std::vector<CheckResult> support_bearing(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const EndPlace& place : end_places(input)) {
        if (!place.on_beam) continue;
        const demand::GoverningState worst =
            governing_at(input, place, [](const demand::SupportReaction& forces) { return forces.down_lb; });
        if (worst.value > no_force_lb) results.push_back(bearing_on_beam(input, place, worst));
    }
    return results;
}

const RegisterCheck framing_check{{"bearing-framing", phrase("Framing bearing under the plate"), "NDS 2018 3.10.2",
                                   phrase("The plate's bearing stress against the wood of the block, joist or rim "
                                          "below, perpendicular to grain."),
                                   bearing_framing}};
const RegisterCheck support_check{
    {"support-bearing", phrase("Joist bearing on the beam"), "NDS 2018 3.10.2",
     phrase("The largest downward force at each beam against the joist's wood, perpendicular to grain."),
     support_bearing}};

}  // namespace
}  // namespace toehold::checks
