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
#include <string>

namespace toehold::checks {
namespace {

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

demand::Worst worst_shear(const CheckInput& input, std::size_t member) {
    demand::Worst worst;
    for (std::size_t state = 0; state < input.demand.states.size(); ++state) {
        const double shear = shear_lb(input, state, member);
        if (shear > worst.value) worst = {shear, state};
    }
    return worst;
}

CheckResult shear_at_anchors(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    const std::string kind = model::name(member.kind);
    const double reference_psi = catalog::wood(input.resolved, index).grade.shear_psi;
    const Adjusted adjusted = adjust_shear(reference_psi, input.resolved.detail.basis);
    const double reached = least_reached_in(input.resolved, index);
    const double width_in = pieces_with_anchors(input.resolved, index) * model::ply_width_in(member);
    const demand::Worst worst = worst_shear(input, index);
    CheckResult result = member_result(input, member, worst.state, "shear of the " + kind + " at its anchors");
    result.demand = worst.value;
    result.unit = "lb";
    result.capacity = resistance::shear_at_fasteners_lb(adjusted.value, width_in, member.depth_in, reached);
    result.steps = {
        {"V_v", "largest vertical shear", vertical_statics(input),
         actions_of(input, worst.state, index).vertical_shear_lb, "lb", "demand"},
        {"T", "sum of the pulls of its anchors", "demand", pull_lb(input, worst.state, index), "lb", "demand"},
        {"V", "shear the anchors bring", "min(V_v, T)", worst.value, "lb", ""},
        {"b", "width of the pieces an anchor stands in", "given", width_in, "in", "input"},
        {"d", "depth of the " + kind, "given", member.depth_in, "in", "input"},
        {"d_e", "from the " + kind + "'s top to the end of the least anchor's full thread",
         "length in the " + kind + " less the tip", reached, "in", ""}};
    append(result.steps, allowable_shear_steps(reference_psi, adjusted));
    result.steps.push_back({"V_r'", "shear the " + kind + " takes there", "2/3 F_v' b d_e (d_e/d)^2", result.capacity,
                            "lb", "NDS 2018 Eq. 3.4-6 (from memory, to be confirmed)"});
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

const RegisterCheck shear_check{
    {"member-shear-at-anchors", "Shear of the framing at its anchors", "NDS 2018 3.4.3.3",
     "Wood below the points of short anchors may split off: the shear a block, joist or rim "
     "takes above them.",
     member_shear_at_anchors}};
const RegisterCheck tension_check{
    {"member-tension-perp", "Tension across the grain where anchors lift the member from its top", clause,
     "How deep each pulled anchor takes hold of its block, joist or rim, against half the "
     "member's depth.",
     tension_perp}};

}  // namespace
}  // namespace toehold::checks
