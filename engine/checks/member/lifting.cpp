// Anchors that lift a member by its top and stop part way down pull on its upper part only; below their points nothing
// but tension across the grain holds the rest to it.
//   - NDS 2018 3.4.3.3 answers with a reduced shear strength. The clause speaks of bolts and lag screws in general;
//     taking it for screws pulled along their axis is on the safe side (assumption). A through-bolt takes hold of the
//     whole depth. Of a doubled member only the pieces an anchor stands in count.
//   - An anchor must reach the middle of the depth: the rule of the loaded edge, for loads hung below the neutral axis,
//     mirrored.
#include "checks/anchor/anchors_in_member.h"
#include "checks/anchor/seating.h"
#include "checks/basis/wood_basis.h"
#include "checks/member/actions.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;

/// Sum of the pulls of the anchors in the member.
double pull_lb(const CheckInput& input, std::size_t state, std::size_t member) {
    double sum = 0.0;
    for (std::size_t anchor = 0; anchor < input.resolved.anchors.size(); ++anchor) {
        if (stands_in(input.resolved.anchors[anchor], member))
            sum += input.demand.states.at(state).anchors.at(anchor).tension_lb;
    }
    return sum;
}

/// Shear the anchors bring: no more than they pull, however hard the plate presses on the same member.
double shear_lb(const CheckInput& input, std::size_t state, std::size_t member) {
    return std::min(actions_of(input, state, member).vertical_shear_lb, pull_lb(input, state, member));
}

demand::GoverningState worst_shear(const CheckInput& input, std::size_t member) {
    demand::GoverningState worst;
    for (std::size_t state = 0; state < input.demand.states.size(); ++state) {
        const double shear = shear_lb(input, state, member);
        if (shear > worst.value) worst = {shear, state};
    }
    return worst;
}

CheckResult shear_at_anchors(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    const format::Phrase name = model::part_name(model::part_of(member));
    const catalog::LumberGrade& grade = catalog::wood(input.resolved, index).grade;
    const Adjusted adjusted = adjust_shear(grade, input.resolved.detail.basis);
    const double reached = least_reached_in(input.resolved, index);
    const double width_in = pieces_with_anchors(input.resolved, index) * model::ply_width_in(member);
    const demand::GoverningState worst = worst_shear(input, index);
    CheckResult result = member_result(input, member, worst.state, phrase("shear at the anchors"));
    result.demand = worst.value;
    result.unit = "lb";
    result.capacity = resistance::shear_at_fasteners_lb(adjusted.value, width_in, member.depth_in, reached);
    result.steps = {{"V_v", phrase("largest vertical shear"), vertical_statics(input),
                     actions_of(input, worst.state, index).vertical_shear_lb, "lb", "demand", Origin::demanded},
                    demanded("T", phrase("total tension of its anchors"), pull_lb(input, worst.state, index), "lb"),
                    {"V", phrase("shear from the anchors"), "min(V_v, T)", worst.value, "lb", ""},
                    from_file("b", phrase("width of the pieces with an anchor"), width_in, "in"),
                    from_file("d", phrase("depth of {}", name), member.depth_in, "in"),
                    {"d_e", phrase("top of {} to the end of the full thread of its shortest anchor", name),
                     "length in the member less the tip", reached, "in", ""}};
    append(result.steps, allowable_shear_steps(grade, adjusted));
    result.steps.push_back({"V_r'", phrase("allowable shear there"), "2/3 F_v' b d_e (d_e/d)^2", result.capacity, "lb",
                            "NDS 2018 Eq. 3.4-6 (from memory, to be confirmed)"});
    conclude(result);
    return result;
}

std::vector<CheckResult> member_shear_at_anchors(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_members(input)) {
        if (pieces_with_anchors(input.resolved, index) > 0) results.push_back(shear_at_anchors(input, index));
    }
    return results;
}

constexpr double hardly_pulled_lb = 1.0;
constexpr const char* clause = "NDS 2018 Table 12.5.1C footnote 2, 3.8.2 (from memory, to be confirmed)";

const char* reach_formula(const catalog::Anchor& anchor) {
    return anchor.kind == catalog::FastenerKind::through_bolt ? "to the nut: the whole depth"
                                                              : "length in the member less the tip";
}

CheckResult reach(const CheckInput& input, std::size_t index) {
    const catalog::Anchor& anchor = input.resolved.anchors[index];
    const model::Member member = member_of(input.resolved, anchor);
    const format::Phrase name = member_name(input.resolved, anchor);
    CheckResult result = anchor_result(input, index, true);
    result.link = link_between(result.part, model::part_of(member), phrase("reach to mid-depth"));
    result.unit = "in";
    result.demand = resistance::lifting_reach_in(member.depth_in);
    result.capacity = reached_in(input.resolved, anchor);
    result.steps = {demanded("T_u", phrase("largest tension"), input.demand.anchors.at(index).tension_lb, "lb"),
                    from_file("d", phrase("depth of {}", name), member.depth_in, "in"),
                    {"h_min", phrase("minimum reach: to mid-depth"), "0.5 d", result.demand, "in", clause},
                    {"h", phrase("top of {} to the end of the full thread or the nut", name), reach_formula(anchor),
                     result.capacity, "in", ""}};
    conclude(result);
    if (result.status != Status::holds)
        result.note = phrase("Use a through-bolt with a washer or backing plate below the member, or a longer screw.");
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

const RegisterCheck shear_check{{"member-shear-at-anchors", phrase("Framing shear at the anchors"), "NDS 2018 3.4.3.3",
                                 phrase("The shear a block, joist or rim takes above the points of short anchors, "
                                        "below which the wood may split off."),
                                 member_shear_at_anchors}};
const RegisterCheck tension_check{
    {"member-tension-perp", phrase("Framing, tension perpendicular to grain at anchors"), clause,
     phrase("How deep each anchor in tension reaches into its block, joist or rim, against half the member's depth."),
     tension_perp}};

}  // namespace
}  // namespace toehold::checks
