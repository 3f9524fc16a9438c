#include "checks/plate/hole_rules.h"

#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "resistance/aluminum/connection.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/bolt.h"

namespace toehold::checks {
namespace {

using format::phrase;

namespace aluminum = resistance::aluminum;
namespace steel = resistance::steel;

bool in_aluminum_metal(const catalog::Metal& metal) { return metal.kind == catalog::MetalKind::aluminum; }

}  // namespace

CheckResult hole_edge(const catalog::Anchor& anchor, const catalog::Metal& metal, double clear_in) {
    const bool in_aluminum = in_aluminum_metal(metal);
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

Capacity hole_bearing(const catalog::Anchor& anchor, const DrilledMetal& part, double clear_in,
                      const model::Basis& basis) {
    const catalog::Metal& metal = part.metal;
    const bool in_aluminum = in_aluminum_metal(metal);
    Capacity capacity;
    capacity.clause =
        in_aluminum ? "Aluminum Design Manual 2020 J.3 (from memory)" : steel_clause(metal, "AISC 360-16 J3.10");
    const BesideWeld used = strengths(metal, part.welding);
    capacity.missing = used.missing;
    if (!capacity.missing.empty()) return capacity;
    const double edge_in = clear_in + 0.5 * anchor.diameter_in;
    const double nominal_lb =
        in_aluminum ? aluminum::hole_bearing_lb(edge_in, anchor.diameter_in, part.thickness_in, used.ultimate_psi)
                    : steel::hole_bearing_lb(clear_in, anchor.diameter_in, part.thickness_in, used.ultimate_psi);
    const Adjusted usable =
        available(nominal_lb, in_aluminum ? aluminum::rupture_safety : steel::bearing_safety, basis, capacity.clause);
    capacity.value = usable.value;
    capacity.steps = {from_file("D", phrase("anchor diameter"), anchor.diameter_in, "in"),
                      from_file("t", part.thickness_name, part.thickness_in, "in"),
                      from_file("L_c", phrase("clear edge distance of the hole"), clear_in, "in"),
                      ultimate_step(metal, used),
                      {"R_n", phrase("nominal bearing or tear-out strength"),
                       in_aluminum ? "min((L_c + D/2) t F_u, 2 D t F_u)" : "min(1.2 L_c t F_u, 2.4 D t F_u)",
                       nominal_lb, "lb", capacity.clause}};
    append(capacity.steps, usable.steps);
    return capacity;
}

}  // namespace toehold::checks
