// An anchor that lifts a member by its top pulls the upper part off the lower one where it does not reach the middle.
// The rule of the loaded edge, for loads hung below the neutral axis, mirrored.
#include "checks/anchor/anchor_seating.h"
#include "checks/member/member_anchors.h"
#include "resistance/wood/member_strength.h"

#include <string>

namespace toehold::checks {
namespace {

constexpr double hardly_pulled_lb = 1.0;
constexpr const char* clause = "NDS 2018 12.5.1.3, 3.8.2 (from memory, to be confirmed)";

std::string reach_formula(const catalog::Anchor& anchor, const std::string& kind) {
    return anchor.kind == catalog::FastenerKind::through_bolt ? "to the nut: the whole depth"
                                                              : "length in the " + kind + " less the tip";
}

CheckResult reach(const CheckInput& input, std::size_t index) {
    const catalog::Anchor& anchor = input.resolved.anchors[index];
    const model::Member member = member_of(input.resolved, anchor);
    const std::string kind = model::name(member.kind);
    CheckResult result = anchor_result(input, index, true);
    result.link = Link{result.subject, model::subject(member), "hold at half the depth of the " + kind};
    result.unit = "in";
    result.demand = resistance::lifting_reach_in(member.depth_in);
    result.capacity = reached_in(input.resolved, anchor);
    result.steps = {{"T_u", "largest tension", "demand", input.demand.anchors.at(index).tension_lb, "lb", "demand"},
                    {"d", "depth of the " + kind, "given", member.depth_in, "in", "input"},
                    {"h_min", "least reach: to the middle of the depth", "0.5 d", result.demand, "in", clause},
                    {"h", "from the " + kind + "'s top to where the anchor still holds", reach_formula(anchor, kind),
                     result.capacity, "in", ""}};
    conclude(result);
    if (result.status != Status::holds)
        result.note =
            "Through-bolts with a backing plate or washers below the " + kind + ", or longer screws, mend this.";
    return result;
}

std::vector<CheckResult> tension_perp(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        if (!lands(input.resolved.anchors[index])) continue;
        if (input.demand.anchors.at(index).tension_lb > hardly_pulled_lb) results.push_back(reach(input, index));
    }
    return results;
}

const RegisterCheck registered{{"member-tension-perp",
                                "Tension across the grain where anchors lift the member from its top", clause,
                                "How deep each pulled anchor takes hold of its block, joist or rim, against half the "
                                "member's depth.",
                                tension_perp}};

}  // namespace
}  // namespace toehold::checks
