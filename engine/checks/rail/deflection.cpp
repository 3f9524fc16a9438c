// How far mid-span of a rail moves. Neither IBC nor IRC sets a limit; ASTM E985, withdrawn in 2015, gives h/24 + L/96
// for a level load at mid-span between posts, beside h/12 at a post.
#include "checks/basis/result_parts.h"
#include "checks/rail/rail.h"

namespace toehold::checks {

using format::phrase;

const char* rail_deflection_clause() {
    return "ASTM E985, withdrawn 2015 (h/24 + L/96 read in two quotations, to be confirmed)";
}

double rail_deflection_limit_in(double guard_height_in, double span_in) {
    return guard_height_in / 24.0 + span_in / 96.0;
}

CheckResult rail_deflection(const RailSpan& span, const RailMovement& movement, double guard_height_in) {
    CheckResult result;
    result.id = "rail-deflection";
    result.title = phrase("Deflection at mid-rail");
    result.part = span.part;
    result.clause = rail_deflection_clause();
    result.unit = "in";
    result.demand = movement.total_in();
    result.capacity = rail_deflection_limit_in(guard_height_in, span.length_in);
    result.steps = {
        demanded("u_r", phrase("deflection from bending of the rail"), movement.rail_in, "in"),
        demanded("u_p", phrase("deflection from bending of the posts"), movement.posts_in, "in"),
        demanded("u_b", phrase("deflection from rotation of the bases, framing included"), movement.bases_in, "in"),
        demanded("u_c", phrase("deflection from the rail's connections"), movement.connection_in, "in"),
        {"u", phrase("deflection at mid-span, level, under the push alone"), "u_r + u_p + u_c + u_b", result.demand,
         "in", ""},
        from_file("h", phrase("guard height"), guard_height_in, "in"),
        from_file("L", phrase("span between the posts' axes, along the rail"), span.length_in, "in"),
        {"u_max", phrase("deflection limit"), "h/24 + L/96", result.capacity, "in", result.clause}};
    result.note = phrase(
        "IBC and IRC set no limit on guard deflection; this limit is from a performance specification that has been "
        "withdrawn.");
    conclude(result);
    return result;
}

}  // namespace toehold::checks
