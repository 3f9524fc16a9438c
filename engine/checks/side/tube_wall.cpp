// An anchor through a tube pulls its head or washer into the tube's wall on the far side from the member: nothing backs
// that wall but the tube's own sides.
#include "resistance/steel/tube_wall.h"
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "checks/basis/metal_basis.h"
#include "checks/post/foot.h"
#include "checks/registry.h"
#include "demand/demand.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/tube.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using catalog::MetalKind;
using format::phrase;

namespace steel = resistance::steel;

/// Diameter of what presses on the wall, in; 0 where a report's fastener does not say. A plate counts as the circle in
/// it.
double pressed_spot_in(const Anchor& anchor) {
    if (anchor.head_plate) return std::min(anchor.head_plate->width_in, anchor.head_plate->depth_in);
    return anchor.washer ? anchor.washer->outside_diameter_in : anchor.head_width_in;
}

Capacity wall_capacity(const CheckInput& input, const PostFoot& foot, double spot_in) {
    const catalog::Metal& metal = input.resolved.post_metal;
    const bool in_aluminum = metal.kind == MetalKind::aluminum;
    const double wall_in =
        in_aluminum ? foot.piece.wall_in : steel::design_wall_in(foot.piece.wall_in, metal.full_wall);
    const BesideWeld used = strengths(metal, {});
    Capacity capacity{0.0, steel_clause(metal, "AISC 360-16 K1 (from memory)"), {}, used.missing};
    if (!capacity.missing.empty()) return capacity;
    const double nominal = steel::pressed_wall_lb(foot.piece.width_in, wall_in, spot_in, used.yield_psi);
    const Adjusted usable =
        available(nominal, in_aluminum ? resistance::aluminum::yield_safety : steel::wall_plastification_safety,
                  input.resolved.detail.basis, capacity.clause);
    capacity.value = usable.value;
    capacity.steps = {
        from_file("B", phrase("width of the wall"), foot.piece.width_in, "in"),
        {"t", phrase("design wall thickness"), in_aluminum ? "t_w" : "0.93 t_w, or the whole wall", wall_in, "in",
         "AISC 360-16 B4.2"},
        from_file("d", phrase("washer, plate or head on it, at most 0.85 B"), spot_in, "in"),
        yield_step(metal, used),
        {"R_n", phrase("nominal force that yields the wall, the lesser of two patterns of yield lines"),
         "F_y t^2/(1 - b) (2 b + 4 sqrt(1 - b)), b = 0.886 d/B; pi F_y t^2/(1 - d/B)", nominal, "lb", capacity.clause}};
    append(capacity.steps, usable.steps);
    return capacity;
}

CheckResult pressed_wall(const CheckInput& input, std::size_t index, const PostFoot& foot, double spot_in) {
    const Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, true);
    result.link = link_between({model::PartKind::post}, part_of(anchor), phrase("wall of the tube under the head"));
    result.unit = "lb";
    result.demand = input.demand.anchors.at(index).tension_lb;
    if (!take_capacity(result, wall_capacity(input, foot, spot_in))) return result;
    result.steps.push_back(demanded("T", phrase("largest tension"), result.demand, "lb"));
    result.note =
        phrase("A spacer in the tube, or a head that bears on the wall next to the member, spares this wall.");
    conclude(result);
    return result;
}

std::vector<CheckResult> tube_wall(const CheckInput& input) {
    std::vector<CheckResult> results;
    const PostFoot foot = post_foot(input.resolved.detail.post);
    const bool tube = std::holds_alternative<model::RectangularTube>(input.resolved.detail.post);
    if (!tube || on_side(input.resolved.detail).bracket) return results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const double spot_in = pressed_spot_in(input.resolved.anchors[index]);
        if (spot_in > 0.0) results.push_back(pressed_wall(input, index, foot, spot_in));
    }
    return results;
}

const RegisterCheck registered{
    {"side-tube-wall", phrase("Tube wall under the head"), "AISC 360-16 K1 (from memory)",
     phrase("The wall of a tube that an anchor goes through, pressed in by the anchor's head or washer."), tube_wall},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
