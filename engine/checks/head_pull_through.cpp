// A through-bolt whose nut bears on the wood itself: NDS 2018 12.2.5. The clause is for round heads, so the nut's
// across-flats stands for the head's diameter: the smallest circle, and the reading taken.
#include "checks/anchor_seating.h"
#include "checks/wood_basis.h"
#include "resistance/wood/pull_through.h"

#include <variant>

namespace toehold::checks {
namespace {

/// Nothing between nut and wood.
bool bears_on_wood(const catalog::Anchor& anchor) {
    return anchor.kind == catalog::FastenerKind::through_bolt && !anchor.washer_below && !anchor.backing;
}

CheckResult pull_through(const CheckInput& input, std::size_t index) {
    const catalog::Anchor& anchor = input.resolved.anchors[index];
    const model::Block& block = block_of(input.resolved, anchor);
    const double gravity = wood_of(input.resolved, anchor).species.specific_gravity;
    CheckResult result = anchor_result(input, index, true);
    result.demand = input.demand.anchors.at(index).tension_lb;
    result.unit = "lb";
    result.link = Link{result.subject, subject(block), "nut on the wood"};
    const double reference_lb = resistance::head_pull_through_lb(gravity, anchor.head_width_in, block.depth_in);
    const Adjusted adjusted = adjust_withdrawal(reference_lb, input.resolved.detail.basis);
    result.capacity = adjusted.value;
    result.note =
        "The clause is for round heads; the nut's across-flats is taken as the head's diameter, and the factors are "
        "those of withdrawal.";
    result.steps = {{"D_H", "nut across flats, as the head's diameter", "given", anchor.head_width_in, "in", "input"},
                    {"t_ns", "wood above the nut: the block's depth", "given", block.depth_in, "in", "input"},
                    {"G", "specific gravity", "given", gravity, "", "NDS 2018 Table 12.3.3A"},
                    {"W_H", "reference pull-through",
                     block.depth_in <= 2.5 * anchor.head_width_in ? "690 pi D_H G^2 t_ns" : "1725 pi D_H^2 G^2",
                     reference_lb, "lb", "NDS 2018 12.2.5"}};
    result.steps.insert(result.steps.end(), adjusted.steps.begin(), adjusted.steps.end());
    result.steps.push_back(
        {"W_H'", "adjusted pull-through", "W_H and every factor", result.capacity, "lb", "NDS 2018 12.2.5"});
    result.steps.push_back({"T_u", "largest tension", "demand", result.demand, "lb", "demand"});
    conclude(result);
    return result;
}

std::vector<CheckResult> head_pull_through(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const catalog::Anchor& anchor = input.resolved.anchors[index];
        if (bears_on_wood(anchor) && lands(anchor)) results.push_back(pull_through(input, index));
    }
    return results;
}

std::vector<Finding> bolt_without_washer(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (!bears_on_wood(anchor)) continue;
        findings.push_back({"", Severity::fails, subject(anchor), "",
                            "The nut bears on the wood itself; the standard wants at least a standard cut washer, a "
                            "metal plate or a strap between them. Put a washer or a backing plate under the nut."});
    }
    return findings;
}

const RegisterCheck registered{{"head-pull-through", "Nut drawn through the block", "NDS 2018 12.2.5",
                                "A bolt's nut without a washer, drawn up into the block by the largest tension.",
                                head_pull_through}};
// The clause number is from memory; that it asks for a washer was read in a public summary of the standard.
const RegisterFinding without_washer{
    {"bolt-without-washer", "Bolt without a washer on the wood", "NDS 2018 12.1.3.3", bolt_without_washer}};

}  // namespace
}  // namespace toehold::checks
