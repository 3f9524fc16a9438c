// Holes in the plate: each one's distance from the plate's edge, and its anchor's shear leaning on it. AISC 360-16 J3.4
// and J3.10; Aluminum Design Manual 2020 J.3 (from memory).
#include "checks/plate/holes.h"

#include "catalog/resolve.h"
#include "checks/basis/metal_basis.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/shears.h"
#include "checks/post/filler.h"
#include "checks/registry.h"
#include "model/capsule.h"
#include "model/placement.h"
#include "resistance/aluminum/connection.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/bolt.h"

#include <algorithm>
#include <limits>
#include <stdexcept>

namespace toehold::checks {
namespace {

using format::phrase;

namespace aluminum = resistance::aluminum;
namespace steel = resistance::steel;

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

/// The standard measures from the center of a standard hole; here the metal that is left is measured from the edge of
/// the hole as it is, so that a wider hole or a slot needs no rule of its own.
CheckResult edge(const CheckInput& input, const catalog::Anchor& anchor, double clear_in) {
    const bool in_aluminum = on_deck(input.resolved).plate_metal.kind == catalog::MetalKind::aluminum;
    const double from_center_in = in_aluminum ? aluminum::minimum_edge_distance_in(anchor.diameter_in)
                                              : steel::minimum_edge_distance_in(anchor.diameter_in);
    const double standard_in = steel::standard_hole_in(anchor.diameter_in);
    CheckResult result;
    result.part = model::hole_part(anchor.id);
    result.clause = in_aluminum ? "Aluminum Design Manual 2020 J.3 (from memory)" : "AISC 360-16 J3.4";
    result.unit = "in";
    result.demand = from_center_in - 0.5 * standard_in;
    result.capacity = clear_in;
    result.steps = {from_file("D", phrase("anchor diameter"), anchor.diameter_in, "in"),
                    {"L_e", phrase("minimum edge distance, center of a standard hole"),
                     in_aluminum || anchor.diameter_in < 0.5 ? "1.5 D" : "table", from_center_in, "in",
                     in_aluminum                ? result.clause
                     : anchor.diameter_in < 0.5 ? "common practice; the table begins at 1/2 in"
                                                : "AISC 360-16 Table J3.4"},
                    {"d_h", phrase("standard hole diameter"), "D + 1/16", standard_in, "in", "AISC 360-16 Table J3.3"},
                    {"L_c,min", phrase("minimum clear edge distance"), "L_e - d_h/2", result.demand, "in", ""},
                    from_file("L_c", phrase("clear edge distance of this hole"), result.capacity, "in")};
    conclude(result);
    return result;
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

/// Bearing or tear-out towards the nearest edge, whichever way the force points. Aluminum near the post may lie in the
/// zone its weld has softened; the softened value is taken for every hole.
Capacity bearing(const CheckInput& input, const catalog::Anchor& anchor, double clear_in) {
    const model::Plate& plate = on_deck(input.resolved.detail).plate;
    const catalog::Metal& metal = on_deck(input.resolved).plate_metal;
    const model::Basis& basis = input.resolved.detail.basis;
    const bool in_aluminum = metal.kind == catalog::MetalKind::aluminum;
    Capacity capacity;
    capacity.clause =
        in_aluminum ? "Aluminum Design Manual 2020 J.3 (from memory)" : steel_clause(metal, "AISC 360-16 J3.10");
    const BesideWeld used = strengths(metal, {true, weld_filler(input.resolved), plate.thickness_in});
    capacity.missing = used.missing;
    if (!capacity.missing.empty()) return capacity;
    const double edge_in = clear_in + 0.5 * anchor.diameter_in;
    const double nominal_lb =
        in_aluminum ? aluminum::hole_bearing_lb(edge_in, anchor.diameter_in, plate.thickness_in, used.ultimate_psi)
                    : steel::hole_bearing_lb(clear_in, anchor.diameter_in, plate.thickness_in, used.ultimate_psi);
    const Adjusted usable =
        available(nominal_lb, in_aluminum ? aluminum::rupture_safety : steel::bearing_safety, basis, capacity.clause);
    capacity.value = usable.value;
    capacity.steps = {from_file("D", phrase("anchor diameter"), anchor.diameter_in, "in"),
                      from_file("t", phrase("plate thickness"), plate.thickness_in, "in"),
                      from_file("L_c", phrase("clear edge distance of the hole"), clear_in, "in"),
                      ultimate_step(metal, used),
                      {"R_n", phrase("nominal bearing or tear-out strength"),
                       in_aluminum ? "min((L_c + D/2) t F_u, 2 D t F_u)" : "min(1.2 L_c t F_u, 2.4 D t F_u)",
                       nominal_lb, "lb", capacity.clause}};
    append(capacity.steps, usable.steps);
    return capacity;
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
