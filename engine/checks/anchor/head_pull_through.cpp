// A through-bolt whose nut bears on the wood itself: NDS 2018 12.2.5. The clause is for round heads, so the nut's
// across-flats stands for the head's diameter: the smallest circle, and the reading taken. The wood under the nut must
// also not be crushed (3.10.2), which commonly leads.
#include "checks/anchor/anchor_seating.h"
#include "checks/basis/member_basis.h"
#include "checks/basis/wood_basis.h"
#include "resistance/wood/pull_through.h"
#include "resistance/wood/washer_bearing.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using catalog::Anchor;

double pull_through_lb(const CheckInput& input, const Anchor& anchor, std::vector<Step>& steps) {
    const double gravity = wood_of(input.resolved, anchor).species.specific_gravity;
    const double depth_in = member_of(input.resolved, anchor).depth_in;
    const double reference_lb = resistance::head_pull_through_lb(gravity, anchor.head_width_in, depth_in);
    const std::string kind = kind_under(input.resolved, anchor);
    const bool thin = depth_in <= 2.5 * anchor.head_width_in;
    append(steps, {{"D_H", "nut across flats, as the head's diameter", "given", anchor.head_width_in, "in", "input"},
                   {"t_ns", "wood above the nut: the depth of the " + kind, "given", depth_in, "in", "input"},
                   {"G", "specific gravity", "given", gravity, "", "NDS 2018 Table 12.3.3A"},
                   {"W_H", "reference pull-through", thin ? "690 pi D_H G^2 t_ns" : "1725 pi D_H^2 G^2", reference_lb,
                    "lb", "NDS 2018 12.2.5 (from memory)"}});
    const Adjusted adjusted = adjust_withdrawal(reference_lb, input.resolved.detail.basis);
    append(steps, adjusted.steps);
    steps.push_back({"W_H'", "adjusted pull-through", "W_H and every factor", adjusted.value, "lb", "NDS 2018 12.2.5"});
    return adjusted.value;
}

/// The ring of wood under the nut: small, because a bolt's hole takes most of what a nut covers.
double bearing_lb(const CheckInput& input, const Anchor& anchor, std::vector<Step>& steps) {
    const double reference_psi = wood_of(input.resolved, anchor).grade.compression_perp_psi;
    const double hole_in = resistance::bolt_hole_in_wood_in(anchor.diameter_in);
    const resistance::BearingArea ring =
        resistance::washer_bearing(anchor.head_width_in, hole_in, {anchor.seat.value().end_in, anchor.seat->edge_in});
    const Adjusted adjusted = adjust_compression_perp(reference_psi, input.resolved.detail.basis);
    steps.push_back(
        {"F_c,perp", "reference compression across the grain", "given", reference_psi, "psi", "NDS Supplement 2018"});
    append(steps, adjusted.steps);
    steps.push_back({"A", "ring under the nut", "pi (D_H^2 - (D + 1/16)^2)/4", ring.area_in2, "in2", ""});
    const double capacity = adjusted.value * ring.area_in2;
    steps.push_back({"R'", "bearing that the wood allows", "F_c,perp' A", capacity, "lb", "NDS 2018 3.10.2"});
    return capacity;
}

CheckResult pull_through(const CheckInput& input, std::size_t index) {
    const Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, true);
    result.demand = input.demand.anchors.at(index).tension_lb;
    result.unit = "lb";
    result.link = Link{result.subject, subject(member_of(input.resolved, anchor)), "nut on the wood"};
    const double through_lb = pull_through_lb(input, anchor, result.steps);
    const double crushed_lb = bearing_lb(input, anchor, result.steps);
    result.capacity = std::min(through_lb, crushed_lb);
    result.steps.push_back({"R_n", "what the wood above the nut allows", "min(W_H', R')", result.capacity, "lb", ""});
    result.steps.push_back({"T_u", "largest tension", "demand", result.demand, "lb", "demand"});
    result.note =
        "The clause is for round heads: the nut's across-flats is taken as the head's diameter, the factors are those "
        "of withdrawal, and the ring under the nut must bear the pull too.";
    conclude(result);
    return result;
}

std::vector<CheckResult> head_pull_through(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const Anchor& anchor = input.resolved.anchors[index];
        if (bears_on_wood(anchor) && lands(anchor)) results.push_back(pull_through(input, index));
    }
    return results;
}

const RegisterCheck registered{
    {"head-pull-through", "Nut drawn through the framing", "NDS 2018 12.2.5, 3.10.2",
     "A bolt's nut without a washer, drawn up into its block, joist or rim by the largest tension.",
     head_pull_through}};

}  // namespace
}  // namespace toehold::checks
