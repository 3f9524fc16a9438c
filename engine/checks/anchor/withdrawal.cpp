// A screw's thread pulled out of the member it lands in, NDS 2018 12.2: only thread inside it counts, tip excluded.
#include "resistance/wood/withdrawal.h"
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "checks/basis/wood_basis.h"
#include "demand/demand.h"

namespace toehold::checks {
namespace {

using catalog::FastenerKind;
using format::phrase;

std::vector<Step> thread_steps(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const format::Phrase member = member_name(resolved, anchor);
    const Seating seated = seating(resolved, anchor);
    std::vector<Step> steps = embedment_steps(resolved, anchor);
    steps.push_back({"T", phrase("thread, tip included"), "given, or the least of the standard",
                     anchor.thread_length_in, "in", "input", Origin::file});
    steps.push_back(
        {"E", phrase("tip in {}, not counted", member), "", seated.tip_in_member_in, "in", "NDS 2018 12.2"});
    steps.push_back({"L_t", phrase("effective thread in {}", member), "thread in p_e, less E",
                     seated.thread_in_member_in, "in", "NDS 2018 12.2"});
    return steps;
}

/// W of the published equations, with its inputs.
double reference_lb_per_in(const catalog::Anchor& anchor, const catalog::Species& species, std::vector<Step>& steps) {
    const bool lag = anchor.kind == FastenerKind::lag_screw;
    const double withdrawal =
        lag ? resistance::lag_withdrawal_lb_per_in(species.specific_gravity, anchor.diameter_in)
            : resistance::wood_screw_withdrawal_lb_per_in(species.specific_gravity, anchor.diameter_in);
    steps.push_back(given("G", phrase("specific gravity of {}", species.name), species.specific_gravity, "",
                          "NDS 2018 Table 12.3.3A"));
    steps.push_back(from_file("D", phrase("nominal diameter"), anchor.diameter_in, "in"));
    steps.push_back({"W", phrase("reference withdrawal per unit of thread"), lag ? "1800 G^1.5 D^0.75" : "2850 G^2 D",
                     withdrawal, "lb/in", lag ? "NDS 2018 Eq. 12.2-1" : "NDS 2018 Eq. 12.2-2"});
    return withdrawal;
}

void published(CheckResult& result, const CheckInput& input, const catalog::Anchor& anchor, double thread_in) {
    const double per_inch = reference_lb_per_in(anchor, wood_of(input.resolved, anchor).species, result.steps);
    const double reference_lb = per_inch * thread_in;
    result.steps.push_back({"W_r", phrase("reference withdrawal"), "W L_t", reference_lb, "lb", ""});
    result.steps.push_back(
        {"C_eg", phrase("end grain factor"), "side grain", 1.0, "", "NDS 2018 12.5.2.1", Origin::given});
    const Adjusted adjusted = adjust_withdrawal(reference_lb, input.resolved.detail.basis);
    append(result.steps, adjusted.steps);
    result.capacity = adjusted.value;
}

void reported(CheckResult& result, const CheckInput& input, const catalog::Anchor& anchor, double thread_in) {
    const Adjusted per_inch =
        reported_value(anchor.reported.value().withdrawal_lb_per_in, "lb/in", input.resolved.detail.basis);
    append(result.steps, per_inch.steps);
    result.capacity = per_inch.value * thread_in;
    result.clause = "report: " + anchor.reported->report;
}

format::Phrase joined_by(FastenerKind kind) {
    switch (kind) {
        case FastenerKind::lag_screw:
            return phrase("lag screw thread");
        case FastenerKind::wood_screw:
            return phrase("wood screw thread");
        default:
            return phrase("thread of the reported fastener");
    }
}

CheckResult withdrawal(const CheckInput& input, std::size_t index) {
    const catalog::Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, true);
    result.demand = input.demand.anchors.at(index).tension_lb;
    result.unit = "lb";
    result.link = link_between(result.part, member_part(input.resolved, anchor), joined_by(anchor.kind));
    const Seating seated = seating(input.resolved, anchor);
    result.steps = thread_steps(input.resolved, anchor);
    if (anchor.kind != FastenerKind::reported) {
        published(result, input, anchor, seated.thread_in_member_in);
    } else if (anchor.reported.value().withdrawal_lb_per_in > 0.0) {
        reported(result, input, anchor, seated.thread_in_member_in);
    } else {
        lacks_evidence(result,
                       phrase("The allowable withdrawal of this fastener per inch of thread is not specified. Give it, "
                              "with its report."));
        return result;
    }
    const bool lag_or_screw = anchor.kind != FastenerKind::reported;
    result.steps.push_back({"W'", phrase("adjusted withdrawal"),
                            lag_or_screw ? "W_r and every factor" : "R_a and every factor, times L_t", result.capacity,
                            "lb", ""});
    result.steps.push_back(demanded("T_u", phrase("largest tension"), result.demand, "lb"));
    conclude(result);
    if (!(seated.thread_in_member_in > 0.0))
        result.note = phrase("No effective thread is in {}, only shank or tip. Use a longer screw or a through-bolt.",
                             member_name(input.resolved, anchor));
    return result;
}

std::vector<CheckResult> anchor_withdrawal(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const catalog::Anchor& anchor = input.resolved.anchors[index];
        if (anchor.kind != FastenerKind::through_bolt && lands(anchor)) results.push_back(withdrawal(input, index));
    }
    return results;
}

const RegisterCheck registered{
    {"anchor-withdrawal",
     phrase("Anchor withdrawal"),
     "NDS 2018 12.2",
     phrase("A screw's thread in its block, joist or rim against the largest tension on the anchor."),
     anchor_withdrawal,
     {"anchor-combined"}}};

}  // namespace
}  // namespace toehold::checks
