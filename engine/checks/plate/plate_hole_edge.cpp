// A hole's distance from the plate's edge: AISC 360-16 J3.4, or 1.5 D in aluminum (from memory). The standard measures
// from the centre of a standard hole; here the metal that is left is measured from the edge of the hole as it is, so
// that a wider hole or a slot needs no rule of its own.
#include "checks/anchor/seating.h"
#include "checks/plate/plate_hole.h"
#include "checks/registry.h"
#include "resistance/aluminum/connection.h"
#include "resistance/steel/hole_edge.h"

#include <algorithm>

namespace toehold::checks {
namespace {

namespace steel = resistance::steel;

CheckResult edge(const CheckInput& input, const catalog::Anchor& anchor) {
    const model::Plate& plate = on_deck(input.resolved.detail).plate;
    const bool in_aluminum = on_deck(input.resolved).plate_metal.kind == catalog::MetalKind::aluminum;
    const double from_center_in = in_aluminum ? resistance::aluminum::minimum_edge_distance_in(anchor.diameter_in)
                                              : steel::minimum_edge_distance_in(anchor.diameter_in);
    const double standard_in = steel::standard_hole_in(anchor.diameter_in);
    CheckResult result;
    result.subject = "hole " + anchor.id;
    result.clause = in_aluminum ? "Aluminum Design Manual 2020 J.3 (from memory)" : "AISC 360-16 J3.4";
    result.unit = "in";
    result.demand = from_center_in - 0.5 * standard_in;
    result.capacity = std::max(0.0, clear_edge_in(plate, hole_of(plate, anchor.id)));
    result.steps = {{"D", "anchor's diameter", "given", anchor.diameter_in, "in", "input"},
                    {"L_e", "least distance from a standard hole's centre to an edge",
                     in_aluminum || anchor.diameter_in < 0.5 ? "1.5 D" : "table", from_center_in, "in",
                     in_aluminum                ? result.clause
                     : anchor.diameter_in < 0.5 ? "common practice; the table begins at 1/2 in"
                                                : "AISC 360-16 Table J3.4"},
                    {"d_h", "standard hole", "D + 1/16", standard_in, "in", "AISC 360-16 Table J3.3"},
                    {"L_c,min", "least metal between hole and edge", "L_e - d_h/2", result.demand, "in", ""},
                    {"L_c", "metal between this hole and the nearest edge", "given", result.capacity, "in", "input"}};
    conclude(result);
    return result;
}

std::vector<CheckResult> plate_hole_edge(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const catalog::Anchor& anchor : input.resolved.anchors) results.push_back(edge(input, anchor));
    return results;
}

const RegisterCheck registered{
    {"plate-hole-edge", "Hole to the plate's edge", "AISC 360-16 J3.4",
     "The metal between each anchor's hole and the nearest edge of the plate.", plate_hole_edge},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
