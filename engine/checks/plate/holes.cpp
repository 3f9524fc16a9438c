// Holes in the plate: each one's distance from the plate's edge, and its anchor's shear leaning on it. AISC 360-16 J3.4
// and J3.10; Aluminum Design Manual 2020 J.3 (from memory).
#include "checks/plate/holes.h"

#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/shears.h"
#include "checks/plate/hole_rules.h"
#include "checks/post/filler.h"
#include "checks/registry.h"
#include "model/capsule.h"
#include "model/placement.h"

#include <algorithm>
#include <limits>
#include <stdexcept>

namespace toehold::checks {
namespace {

using format::phrase;

/// Of every anchor's hole, in order of the anchors.
struct ClearEdges {
    std::vector<double> all_in;
    [[nodiscard]] ClearEdges grown(double) const { return *this; }
};

std::shared_ptr<const ClearEdges> clear_edges(const CheckInput& input) {
    return input.once<ClearEdges>([&input] {
        const model::Plate& plate = on_deck(input.resolved.detail).plate;
        ClearEdges found;
        for (const catalog::Anchor& anchor : input.resolved.anchors)
            found.all_in.push_back(std::max(0.0, clear_edge_in(plate, hole_of(plate, anchor.id))));
        return found;
    });
}

CheckResult edge(const CheckInput& input, const catalog::Anchor& anchor, double clear_in) {
    return hole_edge(anchor, on_deck(input.resolved).plate_metal, clear_in);
}

std::vector<CheckResult> plate_hole_edge(const CheckInput& input) {
    std::vector<CheckResult> results;
    const auto edges = clear_edges(input);
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index)
        results.push_back(edge(input, input.resolved.anchors[index], edges->all_in[index]));
    return results;
}

const RegisterCheck registered_edge{
    {"plate-hole-edge", phrase("Plate hole edge distance"), "AISC 360-16 J3.4",
     phrase("Metal between each anchor hole and the nearest edge of the plate."), plate_hole_edge},
    {model::MountKind::plate_on_deck}};

/// Aluminum near the post may lie in the zone its weld has softened; the softened value is taken for every hole.
Capacity bearing(const CheckInput& input, const catalog::Anchor& anchor, double clear_in) {
    const double thickness_in = on_deck(input.resolved.detail).plate.thickness_in;
    return hole_bearing(anchor,
                        {on_deck(input.resolved).plate_metal,
                         thickness_in,
                         {true, weld_filler(input.resolved), thickness_in},
                         phrase("plate thickness")},
                        clear_in, input.resolved.detail.basis);
}

CheckResult at_hole(const CheckInput& input, std::size_t index, double clear_in) {
    const catalog::Anchor& anchor = input.resolved.anchors[index];
    CheckResult result;
    result.part = model::hole_part(anchor.id);
    result.unit = "lb";
    result.link =
        link_between({model::PartKind::plate}, model::anchor_part(anchor.id), phrase("anchor shank in its hole"));
    const demand::GoverningState worst = largest_shear(input, index);
    result.demand = worst.value;
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    const Capacity strength = bearing(input, anchor, clear_in);
    if (!take_capacity(result, strength)) return result;
    result.steps.push_back(demanded("V", phrase("largest anchor shear"), result.demand, "lb"));
    conclude(result);
    return result;
}

std::vector<CheckResult> plate_hole_bearing(const CheckInput& input) {
    std::vector<CheckResult> results;
    const auto edges = clear_edges(input);
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index)
        results.push_back(at_hole(input, index, edges->all_in[index]));
    return results;
}

const RegisterCheck registered_bearing{
    {"plate-hole-bearing", phrase("Anchor bearing on plate hole"), "AISC 360-16 J3.10",
     phrase("Bearing and tear-out of the plate at each hole under the shear of its anchor."), plate_hole_bearing},
    {model::MountKind::plate_on_deck}};

}  // namespace

const model::Hole& hole_of(const model::Plate& plate, const std::string& id) {
    const auto found =
        std::find_if(plate.holes.begin(), plate.holes.end(), [&](const model::Hole& hole) { return hole.id == id; });
    if (found == plate.holes.end()) throw std::logic_error("the plate has no hole " + id);
    return *found;
}

double clear_edge_in(const model::Plate& plate, const model::Hole& hole) {
    const model::Capsule shape = model::capsule(hole);
    double distance = std::numeric_limits<double>::infinity();
    for (const model::Segment& side : model::sides(model::polygon(plate.outline)))
        distance = std::min(distance, model::distance_in(shape.axis, side));
    const bool inside = model::edge_distance_in(plate.outline, hole.center) > 0.0;
    return (inside ? distance : -distance) - shape.radius_in;
}

}  // namespace toehold::checks
