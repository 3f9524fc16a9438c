// The horizontal force each anchor carries from plate to framing, NDS 2018 12.3: worst over every state, because the
// value turns with the angle to the member's grain.
#include "catalog/resolve.h"
#include "checks/anchor/lateral_joint.h"
#include "checks/anchor/seating.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/shears.h"
#include "demand/governing_state.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using catalog::FastenerKind;
using format::Dimension;
using format::phrase;

CheckResult for_state(const CheckInput& input, std::size_t index, const demand::State& state) {
    const catalog::Anchor& anchor = input.resolved.anchors[index];
    CheckResult result;
    result.part = part_of(anchor);
    result.unit = "lb";
    result.demand = state.anchors.at(index).shear_lb();
    result.direction_deg = degrees(state.direction_rad);
    result.link = link_between(result.part, member_part(input.resolved, anchor), phrase("bearing of the shank"));
    return result;
}

void add_demand(CheckResult& result) {
    result.steps.push_back(demanded("V", phrase("lateral force on the anchor"), result.demand, "lb"));
}

CheckResult published(const CheckInput& input, std::size_t index) {
    const LateralJoint joint = lateral_joint(input.resolved, index);
    const std::vector<double> allowable_lb = adjusted_lateral_lb(input, joint);
    const demand::GoverningState worst = demand::governing_index(input.demand, [&](std::size_t state) {
        return ratio(input.demand.states[state].anchors.at(index).shear_lb(), allowable_lb[state]);
    });
    const demand::State& state = input.demand.states.at(worst.state);
    const LateralValue value = lateral_value(joint, state);
    CheckResult result = for_state(input, index, state);
    result.capacity = value.adjusted_lb;
    result.steps = lateral_steps(input.resolved, joint, value);
    result.note = lateral_note(joint, value);
    add_demand(result);
    conclude(result);
    return result;
}

CheckResult reported(const CheckInput& input, std::size_t index) {
    const model::ReportedFastener& fastener = input.resolved.anchors[index].reported.value();
    CheckResult result = for_state(input, index, input.demand.states.at(largest_shear(input, index).state));
    result.clause = "report: " + fastener.report;
    if (fastener.lateral_lb <= 0.0) {
        lacks_evidence(result,
                       phrase("The allowable lateral value of this fastener is not specified. Give it, with its "
                              "report."));
        return result;
    }
    const Adjusted allowable = reported_value(fastener.lateral_lb, "lb", input.resolved.detail.basis);
    result.capacity = allowable.value;
    result.steps = allowable.steps;
    add_demand(result);
    conclude(result);
    return result;
}

CheckResult too_thick(const CheckInput& input, std::size_t index) {
    CheckResult result = for_state(input, index, input.demand.states.at(largest_shear(input, index).state));
    lacks_evidence(result,
                   phrase("The lateral equations of the standard do not cover diameters over {}. Use a smaller anchor.",
                          Dimension{1.0}));
    return result;
}

std::vector<CheckResult> on_seats(const CheckInput& input) {
    std::vector<CheckResult> results;
    if (input.demand.states.empty()) return results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const catalog::Anchor& anchor = input.resolved.anchors[index];
        if (!lands(anchor)) continue;
        if (anchor.kind == FastenerKind::reported) {
            results.push_back(reported(input, index));
        } else {
            results.push_back(covered(anchor) ? published(input, index) : too_thick(input, index));
        }
    }
    return results;
}

/// An anchor that crosses a member on its way bears on that one.
std::vector<CheckResult> anchor_lateral(const CheckInput& input) {
    const auto crosses = [](const catalog::Anchor& anchor) { return anchor.crossed.has_value(); };
    const std::vector<catalog::Anchor>& anchors = input.resolved.anchors;
    if (std::none_of(anchors.begin(), anchors.end(), crosses)) return on_seats(input);
    const catalog::Resolved sheared = catalog::as_sheared(input.resolved);
    return on_seats({sheared, input.demand, nullptr, input.asked});
}

const RegisterCheck registered{
    {"anchor-lateral",
     phrase("Anchor, lateral"),
     "NDS 2018 12.3",
     phrase("The anchor's shank in bearing on plate and framing, decking and shims taken as a "
            "gap, against its lateral force in every direction."),
     anchor_lateral,
     {"anchor-combined"}}};

}  // namespace
}  // namespace toehold::checks
