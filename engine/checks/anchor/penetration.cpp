// How deep a screw must reach into the member it lands in, whatever its force: NDS 2018 12.1.4.6 and 12.1.5.6.
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "resistance/wood/withdrawal.h"

namespace toehold::checks {
namespace {

using catalog::FastenerKind;
using format::Dimension;
using format::phrase;

struct Requirement {
    double least_in = 0.0;
    const char* formula = "";  ///< empty where a report states the penetration
    const char* clause = "";
    bool tip_counts = false;
};

/// A report rarely says whether its penetration includes the tip; leaving the tip out is conservative.
Requirement requirement(const catalog::Anchor& anchor) {
    switch (anchor.kind) {
        case FastenerKind::lag_screw:
            return {resistance::lag_minimum_penetration_in(anchor.diameter_in), "4 D", "NDS 2018 12.1.4.6", false};
        case FastenerKind::wood_screw:
            return {resistance::wood_screw_minimum_penetration_in(anchor.diameter_in), "6 D", "NDS 2018 12.1.5.6",
                    true};
        default:
            return {anchor.reported.value().minimum_penetration_in, "", "report", false};
    }
}

CheckResult penetration(const CheckInput& input, std::size_t index) {
    const catalog::Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, false);
    result.unit = "in";
    const Requirement needed = requirement(anchor);
    const Seating seated = seating(input.resolved, anchor);
    result.demand = needed.least_in;
    result.capacity = seated.embedment_in - (needed.tip_counts ? 0.0 : seated.tip_in_member_in);
    result.clause = anchor.kind == FastenerKind::reported ? "report: " + anchor.reported->report : needed.clause;
    result.steps = embedment_steps(input.resolved, anchor);
    if (!needed.tip_counts)
        result.steps.push_back({"E", phrase("tip in {}, not counted", member_name(input.resolved, anchor)), "",
                                seated.tip_in_member_in, "in", needed.clause});
    result.steps.push_back({"p", phrase("penetration"), needed.tip_counts ? "p_e, tip included" : "p_e - E",
                            result.capacity, "in", needed.clause});
    if (!(needed.least_in > 0.0)) {
        lacks_evidence(result,
                       phrase("The minimum penetration of this fastener is not specified. Give it, with its report."));
        return result;
    }
    const format::Phrase least = phrase("minimum penetration");
    result.steps.push_back(anchor.kind == FastenerKind::reported
                               ? given("p_min", least, needed.least_in, "in", needed.clause)
                               : Step{"p_min", least, needed.formula, needed.least_in, "in", needed.clause});
    conclude(result);
    if (result.status != Status::holds)
        result.note = phrase("The screw is {} too short in {}. Use a longer screw or a through-bolt.",
                             Dimension{result.demand - result.capacity}, member_name(input.resolved, anchor));
    return result;
}

std::vector<CheckResult> anchor_penetration(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const catalog::Anchor& anchor = input.resolved.anchors[index];
        if (anchor.kind != FastenerKind::through_bolt && lands(anchor)) results.push_back(penetration(input, index));
    }
    return results;
}

const RegisterCheck registered{
    {"anchor-penetration",
     phrase("Anchor penetration"),
     "NDS 2018 12.1.4.6, 12.1.5.6",
     phrase("How deep a screw reaches into its block, joist or rim against the minimum of the standard."),
     anchor_penetration,
     {"anchor-withdrawal", "anchor-lateral", "anchor-combined", "member-tension-perp"}}};

}  // namespace
}  // namespace toehold::checks
