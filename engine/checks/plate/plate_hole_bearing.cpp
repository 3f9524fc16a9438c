// An anchor leaning on its hole in the plate: bearing and tear-out, AISC 360-16 J3.10; Aluminum Design Manual 2020 J.3
// (from memory). The force is taken towards the nearest edge, whichever way it points.
#include "checks/anchor/seating.h"
#include "checks/basis/metal_basis.h"
#include "checks/plate/plate_hole.h"
#include "checks/registry.h"
#include "demand/worst.h"
#include "resistance/aluminum/connection.h"
#include "resistance/aluminum/flexure.h"
#include "resistance/steel/hole_edge.h"

#include <algorithm>

namespace toehold::checks {
namespace {

/// Aluminum near the post may lie in the zone its weld has softened; the softened value is taken for every hole.
Capacity bearing(const CheckInput& input, const catalog::Anchor& anchor) {
    const model::Plate& plate = on_deck(input.resolved.detail).plate;
    const catalog::Metal& metal = on_deck(input.resolved).plate_metal;
    const model::Basis& basis = input.resolved.detail.basis;
    const bool in_aluminum = metal.kind == catalog::MetalKind::aluminum;
    Capacity capacity;
    capacity.clause =
        in_aluminum ? "Aluminum Design Manual 2020 J.3 (from memory)" : steel_clause(metal, "AISC 360-16 J3.10");
    const BesideWeld used = strengths(metal, true);
    capacity.missing = used.missing;
    if (!capacity.missing.empty()) return capacity;
    const double clear_in = std::max(0.0, clear_edge_in(plate, hole_of(plate, anchor.id)));
    const double edge_in = clear_in + 0.5 * anchor.diameter_in;
    const double nominal_lb =
        in_aluminum
            ? resistance::aluminum::hole_bearing_lb(edge_in, anchor.diameter_in, plate.thickness_in, used.ultimate_psi)
            : resistance::steel::hole_bearing_lb(clear_in, anchor.diameter_in, plate.thickness_in, used.ultimate_psi);
    const Adjusted usable =
        available(nominal_lb, in_aluminum ? resistance::aluminum::rupture_safety : resistance::steel::bearing_safety,
                  basis, capacity.clause);
    capacity.value = usable.value;
    capacity.steps = {
        {"D", "anchor's diameter", "given", anchor.diameter_in, "in", "input"},
        {"t", "plate thickness", "given", plate.thickness_in, "in", "input"},
        {"L_c", "metal between the hole and the nearest edge", "given", clear_in, "in", "input"},
        ultimate_step(metal, used),
        {"R_n", "nominal bearing or tear-out",
         in_aluminum ? "the lesser of (L_c + D/2) t F_u and 2 D t F_u" : "the lesser of 1.2 L_c t F_u and 2.4 D t F_u",
         nominal_lb, "lb", capacity.clause}};
    append(capacity.steps, usable.steps);
    return capacity;
}

CheckResult at_hole(const CheckInput& input, std::size_t index) {
    const catalog::Anchor& anchor = input.resolved.anchors[index];
    CheckResult result;
    result.subject = "hole " + anchor.id;
    result.unit = "lb";
    result.link = Link{"plate", subject(anchor), "shank against its hole"};
    const demand::Worst worst = demand::worst_state(
        input.demand, [&](const demand::State& state) { return state.anchors.at(index).shear_lb(); });
    result.demand = worst.value;
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    const Capacity strength = bearing(input, anchor);
    if (!take_capacity(result, strength)) return result;
    result.steps.push_back({"V", "largest shear of the anchor", "demand", result.demand, "lb", "demand"});
    conclude(result);
    return result;
}

std::vector<CheckResult> plate_hole_bearing(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index)
        results.push_back(at_hole(input, index));
    return results;
}

const RegisterCheck registered{
    {"plate-hole-bearing", "Anchor against its hole", "AISC 360-16 J3.10",
     "Bearing and tear-out of the plate where each anchor's shear leans on its hole.", plate_hole_bearing},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
