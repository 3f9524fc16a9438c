// The plate's toe presses on the decking, and through it on any shims: each must be allowed to bear and be strong
// enough across its thickness. Boards with an allowable bearing from their report are held to it as it stands. With
// packing through the boards the plate does not bear on them (bearing_packing.cpp).
#include "catalog/resolve.h"
#include "catalog/rows.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/member/plate_pressure.h"
#include "checks/registry.h"
#include "demand/governing_state.h"

#include <algorithm>
#include <utility>

namespace toehold::checks {
namespace {

using format::phrase;

std::vector<PressedPatch> patches_of(const CheckInput& input) {
    std::vector<PressedPatch> patches;
    for (std::size_t index = 0; index < input.demand.supports.size(); ++index)
        patches.push_back(pressed_patch(input, index, model::PlanAxis::x));
    return patches;
}

struct Largest {
    PlatePressure pressure;
    demand::SupportForce force;
};

/// The largest stress in the state; none where nothing bears.
Largest largest_pressure(const std::vector<PressedPatch>& patches, const demand::State& state) {
    Largest largest;
    for (std::size_t index = 0; index < state.supports.size(); ++index) {
        const PlatePressure pressure = plate_pressure(patches[index], state.supports[index]);
        if (pressure.stress_psi > largest.pressure.stress_psi) largest = {pressure, state.supports[index]};
    }
    return largest;
}

struct OnDecking;

const demand::State& pressed_most(const CheckInput& input, const std::vector<PressedPatch>& patches) {
    const auto stress_psi = [&](const demand::State& state) {
        return largest_pressure(patches, state).pressure.stress_psi;
    };
    const std::vector<std::size_t> states =
        pressed_states<OnDecking>(input, model::bearing_stress(input.resolved.detail.basis),
                                  [&] { return std::vector{demand::governing_state(input.demand, stress_psi).state}; });
    return input.demand.states.at(states.front());
}

/// A value from the boards' report takes no factor of the wood standard, whatever the boards are of.
Adjusted allowable(const catalog::DeckingMaterial& material, bool reported, const model::Basis& basis) {
    if (reported || material.kind != catalog::DeckingKind::wood)
        return reported_value(material.bearing_psi, "psi", basis);
    Adjusted adjusted = adjust_compression_perp(material.bearing_psi, basis);
    adjusted.steps.insert(adjusted.steps.begin(),
                          given("F_c,perp", phrase("reference compression perpendicular to grain, {}", material.name),
                                material.bearing_psi, "psi", "decking catalog"));
    return adjusted;
}

bool reported_bearing(const catalog::Resolved& resolved) {
    const auto& decking = on_deck(resolved.detail).layers.decking;
    return decking && decking->bearing_psi > 0.0;
}

format::Phrase no_bearing(const catalog::DeckingMaterial& material, const model::PartId& part) {
    if (part.kind == model::PartKind::decking) {
        return phrase(
            "No allowable bearing of a plate on {} is known. Give the value of the boards' evaluation report, "
            "set packing through the boards, or set the plate on the framing.",
            material.name);
    }
    return phrase("No allowable bearing of a plate on {} is known. Use shims of wood or metal.", material.name);
}

CheckResult bearing_on(const CheckInput& input, const catalog::DeckingMaterial& material, model::PartId part) {
    const std::vector<PressedPatch> patches = patches_of(input);
    const demand::State& state = pressed_most(input, patches);
    const Largest largest = largest_pressure(patches, state);
    CheckResult result;
    result.part = std::move(part);
    result.demand = largest.pressure.stress_psi;
    result.unit = "psi";
    result.direction_deg = degrees(state.direction_rad);
    result.steps = pressure_steps(largest.pressure, largest.force);
    if (!material.may_bear) {
        lacks_evidence(result, no_bearing(material, result.part));
        return result;
    }
    if (!(material.bearing_psi > 0.0)) {
        lacks_evidence(
            result,
            phrase(
                "Allowable bearing pressure of {} is not specified. Take it from the evaluation report of the boards.",
                material.name));
        return result;
    }
    const bool reported = result.part.kind == model::PartKind::decking && reported_bearing(input.resolved);
    const Adjusted adjusted = allowable(material, reported, input.resolved.detail.basis);
    result.capacity = adjusted.value;
    append(result.steps, adjusted.steps);
    if (material.kind == catalog::DeckingKind::wood && !reported) {
        result.steps.push_back({"F_c,perp'", phrase("allowable pressure"),
                                "reference value times every factor; C_b = 1.0", adjusted.value, "psi", ""});
    }
    conclude(result);
    result.note = pressure_note(largest.pressure);
    if (material.kind == catalog::DeckingKind::plastic_composite) {
        result.note = sentences(std::move(result.note),
                                phrase("Plastic boards soften in the sun and creep under load that stays: see that the "
                                       "report's value is for the temperature the boards reach."));
    }
    return result;
}

std::vector<CheckResult> bearing_decking(const CheckInput& input) {
    std::vector<CheckResult> results;
    if (input.demand.states.empty()) return results;
    if (on_deck(input.resolved).decking && !on_deck(input.resolved.detail).layers.packing) {
        results.push_back(bearing_on(input, *on_deck(input.resolved).decking, {model::PartKind::decking}));
        results.back().link = link_between({model::PartKind::plate}, {model::PartKind::decking}, phrase("bearing"));
    }
    for (std::size_t index = 0; index < on_deck(input.resolved).shims.size(); ++index) {
        results.push_back(bearing_on(input, on_deck(input.resolved).shims[index],
                                     {model::PartKind::shim, std::to_string(index + 1)}));
    }
    return results;
}

const RegisterCheck registered{
    {"bearing-decking", phrase("Plate bearing on decking"), "NDS 2018 3.10.2",
     phrase("The plate's bearing stress against the allowable bearing of decking and shims."), bearing_decking},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
