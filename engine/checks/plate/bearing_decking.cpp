// The plate's toe presses on the decking, and through it on any shims: each must be allowed to bear and be strong
// enough across its thickness.
#include "catalog/resolve.h"
#include "catalog/rows.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/registry.h"
#include "demand/governing_state.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;

double peak_psi(const demand::State& state) {
    double peak = 0.0;
    for (const demand::SupportForce& support : state.supports) peak = std::max(peak, support.peak_psi);
    return peak;
}

Adjusted allowable(const catalog::DeckingMaterial& material, const model::Basis& basis) {
    if (material.kind != catalog::DeckingKind::wood) return reported_value(material.bearing_psi, "psi", basis);
    Adjusted adjusted = adjust_compression_perp(material.bearing_psi, basis);
    adjusted.steps.insert(adjusted.steps.begin(),
                          given("F_c,perp", phrase("reference compression perpendicular to grain, {}", material.name),
                                material.bearing_psi, "psi", "decking catalog"));
    return adjusted;
}

CheckResult bearing_on(const CheckInput& input, const catalog::DeckingMaterial& material, model::PartId part) {
    const demand::GoverningState worst = demand::governing_state(input.demand, peak_psi);
    CheckResult result;
    result.part = std::move(part);
    result.demand = worst.value;
    result.unit = "psi";
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.steps.push_back(demanded("f_c,perp", phrase("peak pressure under the plate"), worst.value, "psi"));
    if (!material.may_bear) {
        conclude(result);
        result.note =
            phrase("{} may not carry the bearing of a plate. Set the plate on the framing, or on wood packing.",
                   material.name);
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
    const Adjusted adjusted = allowable(material, input.resolved.detail.basis);
    result.capacity = adjusted.value;
    append(result.steps, adjusted.steps);
    result.steps.push_back({"F_c,perp'", phrase("allowable pressure"), "reference value times every factor; C_b = 1.0",
                            adjusted.value, "psi", ""});
    conclude(result);
    result.note = phrase("Peak pressure at the edge of the plate, not the average over the contact area.");
    return result;
}

std::vector<CheckResult> bearing_decking(const CheckInput& input) {
    std::vector<CheckResult> results;
    if (input.demand.states.empty()) return results;
    if (on_deck(input.resolved).decking) {
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
     phrase("Peak pressure under the plate against the allowable bearing of decking and shims."), bearing_decking},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
