// A screw in tension and lateral load from the same push: lag and wood screws by NDS 2018 Eq. 12.4-1, reported
// fasteners by a straight line between their two allowable values. Bolts hold by their nut, so their wood sees no such
// pair.
#include "catalog/resolve.h"
#include "checks/anchor/lateral_joint.h"
#include "checks/anchor/seating.h"
#include "checks/basis/result_parts.h"
#include "demand/governing_state.h"
#include "resistance/wood/withdrawal.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using catalog::FastenerKind;
using format::phrase;

/// W'p of a lag or wood screw; the withdrawal check shows how it comes about.
double withdrawal_lb(const catalog::Resolved& resolved, const Anchor& anchor) {
    const double gravity = wood_of(resolved, anchor).species.specific_gravity;
    const double per_inch = anchor.kind == FastenerKind::lag_screw
                                ? resistance::lag_withdrawal_lb_per_in(gravity, anchor.diameter_in)
                                : resistance::wood_screw_withdrawal_lb_per_in(gravity, anchor.diameter_in);
    return adjust_withdrawal(per_inch * anchor.thread_in_block_in, resolved.detail.basis).value;
}

/// One state's force on the anchor: its size, its slope to the wood's surface, and what the screw holds at that slope.
struct Combined {
    double force_lb = 0.0;
    double slope_rad = 0.0;
    double lateral_lb = 0.0;
    double capacity_lb = 0.0;
};

Combined combined(const demand::AnchorForce& force, double pull_out_lb, double lateral_lb) {
    Combined result;
    result.force_lb = std::hypot(force.tension_lb, force.shear_lb());
    result.slope_rad = std::atan2(force.tension_lb, force.shear_lb());
    result.lateral_lb = lateral_lb;
    result.capacity_lb = resistance::screw_combined_lb(pull_out_lb, result.lateral_lb, result.slope_rad);
    return result;
}

CheckResult for_state(const CheckInput& input, std::size_t index, const demand::State& state) {
    const Anchor& anchor = input.resolved.anchors[index];
    CheckResult result;
    result.part = part_of(anchor);
    result.direction_deg = degrees(state.direction_rad);
    result.link = link_between(result.part, member_part(input.resolved, anchor), phrase("thread and shank together"));
    const demand::AnchorForce& force = state.anchors.at(index);
    result.steps = {demanded("T", phrase("tension on the anchor"), force.tension_lb, "lb"),
                    demanded("V", phrase("lateral force on it from the same push"), force.shear_lb(), "lb")};
    return result;
}

CheckResult screw(const CheckInput& input, std::size_t index) {
    const LateralJoint joint = lateral_joint(input.resolved, index);
    const double pull_out_lb = withdrawal_lb(input.resolved, input.resolved.anchors[index]);
    const std::vector<double> lateral_lb = adjusted_lateral_lb(input, joint);
    const auto in_state = [&](std::size_t number) {
        return combined(input.demand.states[number].anchors.at(index), pull_out_lb, lateral_lb[number]);
    };
    const demand::GoverningState worst = demand::governing_index(input.demand, [&](std::size_t number) {
        const Combined at = in_state(number);
        return ratio(at.force_lb, at.capacity_lb);
    });
    const demand::State& state = input.demand.states.at(worst.state);
    const Combined at = in_state(worst.state);
    CheckResult result = for_state(input, index, state);
    result.unit = "lb";
    result.demand = at.force_lb;
    result.capacity = at.capacity_lb;
    result.steps.push_back({"R", phrase("resultant of the two"), "sqrt(T^2 + V^2)", at.force_lb, "lb", "demand"});
    result.steps.push_back({"alpha", phrase("angle of R to the wood surface"), "atan(T / V)",
                            at.slope_rad * 180.0 / std::numbers::pi, "deg", "NDS 2018 12.4.1"});
    result.steps.push_back({"W'p", phrase("adjusted withdrawal of the whole thread"), "as in the withdrawal check",
                            pull_out_lb, "lb", "NDS 2018 12.2"});
    result.steps.push_back({"Z'", phrase("adjusted lateral value in this direction"), "as in the lateral check",
                            at.lateral_lb, "lb", "NDS 2018 12.3"});
    result.steps.push_back({"Z'_alpha", phrase("adjusted value at the angle"),
                            "W'p Z' / (W'p cos^2 alpha + Z' sin^2 alpha)", at.capacity_lb, "lb",
                            "NDS 2018 Eq. 12.4-1"});
    result.note = lateral_note(joint, lateral_value(joint, state));
    conclude(result);
    return result;
}

/// Allowable tension of a reported fastener: the lesser of what is given of thread and fastener; 0: neither given.
double reported_tension_lb(const Anchor& anchor) {
    const model::ReportedFastener& fastener = anchor.reported.value();
    const double thread_lb = fastener.withdrawal_lb_per_in * anchor.thread_in_block_in;
    if (fastener.withdrawal_lb_per_in <= 0.0) return fastener.tension_lb;
    return fastener.tension_lb > 0.0 ? std::min(thread_lb, fastener.tension_lb) : thread_lb;
}

CheckResult reported(const CheckInput& input, std::size_t index) {
    const Anchor& anchor = input.resolved.anchors[index];
    const model::Basis& basis = input.resolved.detail.basis;
    const Adjusted tension = reported_value(reported_tension_lb(anchor), "lb", basis);
    const Adjusted lateral = reported_value(anchor.reported.value().lateral_lb, "lb", basis);
    const auto sum = [&](const demand::State& state) {
        const demand::AnchorForce& force = state.anchors.at(index);
        return ratio(force.tension_lb, tension.value) + ratio(force.shear_lb(), lateral.value);
    };
    const demand::GoverningState worst = demand::governing_state(input.demand, sum);
    CheckResult result = for_state(input, index, input.demand.states.at(worst.state));
    result.clause = "linear interaction, common practice";
    result.capacity = 1.0;
    if (!(tension.value > 0.0 && lateral.value > 0.0)) {
        lacks_evidence(
            result,
            phrase("The allowable tension or the allowable lateral value of this fastener is not specified. Give both, "
                   "with their report."));
        return result;
    }
    result.demand = worst.value;
    result.steps.push_back(
        {"T_a", phrase("allowable tension: thread in {}, or fastener if less", member_name(input.resolved, anchor)),
         "report", tension.value, "lb", "report: " + anchor.reported->report});
    result.steps.push_back({"V_a", phrase("allowable lateral value"), "report", lateral.value, "lb",
                            "report: " + anchor.reported->report});
    result.steps.push_back({"I", phrase("interaction"), "T / T_a + V / V_a", worst.value, "", "common practice"});
    conclude(result);
    return result;
}

std::vector<CheckResult> anchor_combined(const CheckInput& input) {
    std::vector<CheckResult> results;
    if (input.demand.states.empty()) return results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const Anchor& anchor = input.resolved.anchors[index];
        if (!lands(anchor) || !covered(anchor) || anchor.kind == FastenerKind::through_bolt) continue;
        if (anchor.crossed) continue;  // its shear and its pull are taken by two members
        results.push_back(anchor.kind == FastenerKind::reported ? reported(input, index) : screw(input, index));
    }
    return results;
}

const RegisterCheck registered{
    {"anchor-combined", phrase("Anchor, combined tension and lateral"), "NDS 2018 12.4.1",
     phrase("A screw's tension and lateral force from the same push against its value at that angle."),
     anchor_combined}};

}  // namespace
}  // namespace toehold::checks
