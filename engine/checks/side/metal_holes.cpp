// Holes of the anchors in a bracket's plate, or through the wall of a metal post that they hold directly: metal left to
// the nearest edge, and bearing and tear-out under the anchor's shear. A tube bears with the wall next to the member,
// no more than a bolt through walls that nothing stiffens may have (AISC 360-16 J3.10(c), from memory).
#include "catalog/fastened.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/shears.h"
#include "checks/plate/hole_rules.h"
#include "checks/registry.h"
#include "resistance/steel/bolt.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using format::phrase;

/// Metal between the anchor's hole and the nearest edge, >= 0.
double clear_of_edges_in(const model::BaseDetail& detail, const Anchor& anchor) {
    const model::SideFastened& mount = on_side(detail);
    const double below_in = -anchor.at.z_in;
    double nearest_in = 0.5 * model::shaft(detail.post).width_in - std::abs(anchor.at.x_in);
    double to_end_in = mount.post_bottom_below_top_in - below_in;
    if (mount.bracket) {
        nearest_in = 0.5 * mount.bracket->width_in - std::abs(anchor.at.x_in);
        to_end_in = std::min(below_in - mount.bracket->from_top_in,
                             mount.bracket->from_top_in + mount.bracket->height_in - below_in);
    }
    return std::max(0.0, std::min(nearest_in, to_end_in) - 0.5 * anchor.hole_diameter_in);
}

/// The holed part under an anchor's head; of no meaning where that is wood.
DrilledMetal drilled(const catalog::Resolved& resolved, const catalog::SideMember& side) {
    const bool bracket = on_side(resolved.detail).bracket.has_value();
    const auto& filler = on_side(resolved).filler;
    return {side.metal,
            side.bears_in,
            {bracket, filler ? &*filler : nullptr, side.bears_in},
            bracket ? phrase("plate thickness") : phrase("wall thickness")};
}

std::vector<CheckResult> hole_edges(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const Anchor& anchor : input.resolved.anchors) {
        const catalog::SideMember side = catalog::fastened_by(input.resolved, anchor).side;
        if (!side.wood)
            results.push_back(hole_edge(anchor, side.metal, clear_of_edges_in(input.resolved.detail, anchor)));
    }
    return results;
}

/// Of a steel tube's wall, no more than this.
void limit_in_tube(Capacity& capacity, const CheckInput& input, const Anchor& anchor, const catalog::SideMember& side) {
    const bool tube = side.bears_in < side.thickness_in;
    if (!tube || !capacity.missing.empty() || side.metal.kind == catalog::MetalKind::aluminum) return;
    constexpr const char* clause = "AISC 360-16 J3.10(c), Eq. J7-1 (from memory)";
    const double nominal =
        resistance::steel::tube_hole_bearing_lb(anchor.diameter_in, side.bears_in, side.metal.yield_psi);
    const Adjusted usable = available(nominal, resistance::steel::bearing_safety, input.resolved.detail.basis, clause);
    if (usable.value >= capacity.value) return;
    capacity.value = usable.value;
    capacity.clause = clause;
    capacity.steps.push_back(given("F_y", phrase("yield strength of {}", side.metal.name), side.metal.yield_psi, "psi",
                                   side.metal.source.text));
    capacity.steps.push_back({"R_w", phrase("nominal strength of a bolt through walls that nothing stiffens"),
                              "1.8 F_y D t", nominal, "lb", clause});
    append(capacity.steps, usable.steps);
}

CheckResult bearing_at(const CheckInput& input, std::size_t index, const catalog::SideMember& side) {
    const Anchor& anchor = input.resolved.anchors[index];
    const demand::GoverningState worst = largest_shear(input, index);
    CheckResult result;
    result.part = model::hole_part(anchor.id);
    result.unit = "lb";
    result.link = link_between(model::main_part(input.resolved.detail), model::anchor_part(anchor.id),
                               phrase("anchor shank in its hole"));
    result.demand = worst.value;
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    Capacity strength = hole_bearing(anchor, drilled(input.resolved, side),
                                     clear_of_edges_in(input.resolved.detail, anchor), input.resolved.detail.basis);
    limit_in_tube(strength, input, anchor, side);
    if (!take_capacity(result, strength)) return result;
    result.steps.push_back(demanded("V", phrase("largest anchor shear"), result.demand, "lb"));
    conclude(result);
    return result;
}

std::vector<CheckResult> hole_bearings(const CheckInput& input) {
    std::vector<CheckResult> results;
    if (input.demand.states.empty()) return results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const catalog::SideMember side = catalog::fastened_by(input.resolved, input.resolved.anchors[index]).side;
        if (!side.wood) results.push_back(bearing_at(input, index, side));
    }
    return results;
}

const RegisterCheck edge_check{
    {"side-hole-edge", phrase("Hole edge distance"), "AISC 360-16 J3.4",
     phrase("Metal between each anchor hole in a bracket or a metal post and its nearest edge."), hole_edges},
    {model::MountKind::side_fastened}};
const RegisterCheck bearing_check{
    {"side-hole-bearing", phrase("Anchor bearing on its hole"), "AISC 360-16 J3.10",
     phrase("Bearing and tear-out of a bracket or a metal post's wall at each hole under the shear of its anchor."),
     hole_bearings},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
