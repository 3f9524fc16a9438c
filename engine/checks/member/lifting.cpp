// Anchors that lift a member by its top and stop part way down pull on its upper part only; below their points nothing
// but tension across the grain holds the rest to it.
//   - NDS 2018 3.4.3.3 answers with a reduced shear strength. The clause speaks of bolts and lag screws in general;
//     taking it for screws pulled along their axis is on the safe side (assumption). A through-bolt takes hold of the
//     whole depth. Of a doubled member only the pieces an anchor stands in count. The square of d_e/d is left out where
//     every anchor stands five depths or more from the member's ends.
//   - Anchors driven into a member's side pull its near face in the same way: what is said of its depth then holds of
//   its
//     width, and the shear is that of the horizontal forces.
//   - An anchor must reach the middle of the depth: the rule of the loaded edge, for loads hung below the neutral axis,
//     mirrored. The rule speaks of heavy or medium loads, so it is asked for where a member's anchors together pull
//     with more than a light load.
#include "catalog/anchor_view.h"
#include "checks/anchor/anchors_in_member.h"
#include "checks/anchor/seating.h"
#include "checks/basis/wood_basis.h"
#include "checks/member/actions.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;
using format::Quantity;

std::vector<std::size_t> anchors_in(const catalog::Resolved& resolved, std::size_t member) {
    std::vector<std::size_t> anchors;
    for (std::size_t anchor = 0; anchor < resolved.anchors.size(); ++anchor) {
        if (stands_in(resolved.anchors[anchor], member) && catalog::pulls_on_member(resolved.anchors[anchor]))
            anchors.push_back(anchor);
    }
    return anchors;
}

/// Sum of the pulls of the anchors in the member.
double pull_lb(const demand::State& state, const std::vector<std::size_t>& anchors) {
    double sum = 0.0;
    for (const std::size_t anchor : anchors) sum += state.anchors.at(anchor).tension_lb;
    return sum;
}

/// A member as the anchors that pull it see it: all of one mount lie alike.
struct PulledMember {
    model::Member seen;
    bool from_the_side = false;
    std::vector<std::size_t> anchors;
};

PulledMember pulled_member(const catalog::Resolved& resolved, std::size_t member) {
    PulledMember pulled{model::member(resolved.detail.framing, member), false, anchors_in(resolved, member)};
    if (pulled.anchors.empty()) return pulled;
    const catalog::Anchor& first = resolved.anchors[pulled.anchors.front()];
    pulled.seen = member_of(resolved, first);
    pulled.from_the_side = catalog::lies_level(first);
    return pulled;
}

double shear_lb(const demand::MemberActions& actions, const PulledMember& pulled) {
    return pulled.from_the_side ? std::abs(actions.horizontal_shear_lb) : actions.vertical_shear_lb;
}

/// Shear the anchors bring: no more than they pull, however hard the plate presses on the same member.
demand::GoverningState worst_shear(const CheckInput& input, std::size_t member, const PulledMember& pulled) {
    demand::GoverningState worst;
    for (std::size_t state = 0; state < input.demand.states.size(); ++state) {
        const double shear = std::min(shear_lb(actions_of(input, state, member), pulled),
                                      pull_lb(input.demand.states[state], pulled.anchors));
        if (shear > worst.value) worst = {shear, state};
    }
    return worst;
}

bool near_end(const catalog::Resolved& resolved, std::size_t index, const model::Member& member) {
    if (!member.length_stated) return true;
    return std::any_of(resolved.anchors.begin(), resolved.anchors.end(), [&](const catalog::Anchor& anchor) {
        return stands_in(anchor, index) && anchor.seat->end_in < resistance::near_end_in(member.depth_in);
    });
}

/// How far an anchor that reaches so far in all stands in the piece that lifts the others of a stack: the lowest, or of
/// pieces fastened to each other any.
double reached_in_lifting_piece_in(const model::Member& member, double reached_in) {
    const double piece_in = model::piece_depth_in(member);
    if (member.stack_fastened) return std::min(reached_in, piece_in);
    return std::max(0.0, reached_in - (member.depth_in - piece_in));
}

std::vector<Step> shear_steps(const CheckInput& input, const PulledMember& pulled, std::size_t index,
                              const demand::GoverningState& worst) {
    const double acting_lb = shear_lb(actions_of(input, worst.state, index), pulled);
    const Step shear =
        pulled.from_the_side
            ? Step{"V_h",           phrase("largest horizontal shear"), lateral_statics, acting_lb, "lb", "demand",
                   Origin::demanded}
            : Step{
                  "V_v",           phrase("largest vertical shear"), vertical_statics(input), acting_lb, "lb", "demand",
                  Origin::demanded};
    return {shear,
            demanded("T", phrase("total tension of its anchors"),
                     pull_lb(input.demand.states[worst.state], pulled.anchors), "lb"),
            {"V", phrase("shear from the anchors"), pulled.from_the_side ? "min(V_h, T)" : "min(V_v, T)", worst.value,
             "lb", ""}};
}

/// The section that the anchors take hold of.
std::vector<Step> section_steps(const PulledMember& pulled, double width_in, double in_piece) {
    const model::Member& member = pulled.seen;
    const format::Phrase name = model::part_name(model::part_of(member));
    const double piece_in = model::piece_depth_in(member);
    if (pulled.from_the_side) {
        return {
            from_file("b", phrase("depth of the pieces with an anchor"), width_in, "in"),
            from_file("d", member.stack > 1 ? phrase("width of one piece of {}", name) : phrase("width of {}", name),
                      piece_in, "in"),
            {"d_e", phrase("near face of {} to the end of the full thread of its shortest anchor", name),
             "length in the member less the tip", in_piece, "in", ""}};
    }
    return {
        from_file("b", phrase("width of the pieces with an anchor"), width_in, "in"),
        from_file("d", member.stack > 1 ? phrase("depth of one piece of {}", name) : phrase("depth of {}", name),
                  piece_in, "in"),
        {"d_e",
         member.stack > 1 ? phrase("top of the piece that lifts the others to the end of its shortest anchor's thread")
                          : phrase("top of {} to the end of the full thread of its shortest anchor", name),
         "length in the member less the tip", in_piece, "in", ""}};
}

CheckResult shear_at_anchors(const CheckInput& input, std::size_t index) {
    const PulledMember pulled = pulled_member(input.resolved, index);
    const model::Member& member = pulled.seen;
    const catalog::LumberGrade& grade = catalog::wood(input.resolved, index).grade;
    const Adjusted adjusted = adjust_shear(grade, input.resolved.detail.basis);
    const double reached = least_reached_in(input.resolved, index);
    const double width_in = pieces_with_anchors(input.resolved, index) * model::ply_width_in(member);
    const demand::GoverningState worst = worst_shear(input, index, pulled);
    CheckResult result = member_result(input, member, worst.state, phrase("shear at the anchors"));
    result.demand = worst.value;
    result.unit = "lb";
    const bool near = near_end(input.resolved, index, member);
    const auto strength = near ? resistance::shear_at_fasteners_lb : resistance::shear_at_inner_fasteners_lb;
    const double in_piece = reached_in_lifting_piece_in(member, reached);
    result.capacity = member.stack * strength(adjusted.value, width_in, model::piece_depth_in(member), in_piece);
    result.steps = shear_steps(input, pulled, index, worst);
    append(result.steps, section_steps(pulled, width_in, in_piece));
    append(result.steps, allowable_shear_steps(grade, adjusted));
    result.steps.push_back({"V_r'", phrase("allowable shear there"),
                            near ? "2/3 F_v' b d_e (d_e/d)^2: an anchor less than 5 d from the end"
                                 : "2/3 F_v' b d_e: every anchor 5 d or more from the ends",
                            result.capacity, "lb",
                            near ? "NDS 2018 Eq. 3.4-6" : "NDS 2018 Eq. 3.4-7 (from memory, to be confirmed)"});
    conclude(result);
    return result;
}

std::vector<CheckResult> member_shear_at_anchors(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_members(input)) {
        if (!anchors_in(input.resolved, index).empty()) results.push_back(shear_at_anchors(input, index));
    }
    return results;
}

constexpr double hardly_pulled_lb = 1.0;

/// Pulls of a factored demand are that much larger.
double light_load_lb(const model::Basis& basis) {
    constexpr double live_load_factor = 1.6;
    return basis.method == model::Method::lrfd ? live_load_factor * resistance::light_load_lb()
                                               : resistance::light_load_lb();
}

/// Whether a member's anchors ever pull together with more than a light load.
bool hung_from(const CheckInput& input, std::size_t member) {
    const std::vector<std::size_t> anchors = anchors_in(input.resolved, member);
    const double light_lb = light_load_lb(input.resolved.detail.basis);
    return std::any_of(input.demand.states.begin(), input.demand.states.end(),
                       [&](const demand::State& state) { return pull_lb(state, anchors) >= light_lb; });
}

constexpr const char* clause = "NDS 2018 Table 12.5.1C footnote 2, 3.8.2 (from memory, to be confirmed)";

const char* reach_formula(const catalog::Anchor& anchor) {
    if (anchor.kind != catalog::FastenerKind::through_bolt) return "length in the member less the tip";
    return catalog::lies_level(anchor) ? "to the nut: the whole width" : "to the nut: the whole depth";
}

/// Of a loose stack the lowest piece must be taken hold of, since it lifts the others; of one whose pieces are fastened
/// to each other, the top one.
double reach_needed_in(const model::Member& member) {
    const double piece_in = model::piece_depth_in(member);
    const double above_in = member.stack_fastened ? 0.0 : member.depth_in - piece_in;
    return above_in + resistance::lifting_reach_in(piece_in);
}

const char* reach_words(const model::Member& member) {
    if (member.stack == 1) return "0.5 d";
    return member.stack_fastened ? "half of the top piece"
                                 : "to the middle of the lowest piece, which lifts the others";
}

format::Phrase remedy(const catalog::Anchor& anchor, const model::Member& member) {
    if (catalog::lies_level(anchor))
        return phrase("Use a through-bolt with a washer or plate on the member's far side, or a longer screw.");
    if (member.stack > 1 && !member.stack_fastened)
        return phrase(
            "The anchor does not take hold of the lowest piece of the stack, and nothing else lifts it. Use a "
            "through-bolt or a longer screw, or screw the pieces to each other.");
    return phrase("Use a through-bolt with a washer or backing plate below the member, or a longer screw.");
}

CheckResult reach(const CheckInput& input, std::size_t index) {
    const catalog::Anchor& anchor = input.resolved.anchors[index];
    const model::Member member = member_of(input.resolved, anchor);
    const format::Phrase name = member_name(input.resolved, anchor);
    const bool level = catalog::lies_level(anchor);
    CheckResult result = anchor_result(input, index, true);
    result.link = link_between(result.part, model::part_of(member),
                               level ? phrase("reach to the middle") : phrase("reach to mid-depth"));
    result.unit = "in";
    result.demand = reach_needed_in(member);
    result.capacity = reached_in(input.resolved, anchor);
    result.steps = {
        demanded("T_u", phrase("largest tension"), input.demand.anchors.at(index).tension_lb, "lb"),
        from_file("d", level ? phrase("width of {}", name) : phrase("depth of {}", name), member.depth_in, "in"),
        {"h_min",
         level ? phrase("minimum reach: to the middle, its anchors pulling with {} or more together",
                        Quantity{light_load_lb(input.resolved.detail.basis), "lb"})
               : phrase("minimum reach: to mid-depth, its anchors pulling with {} or more together",
                        Quantity{light_load_lb(input.resolved.detail.basis), "lb"}),
         reach_words(member), result.demand, "in", clause},
        {"h",
         level ? phrase("near face of {} to the end of the full thread or the nut", name)
               : phrase("top of {} to the end of the full thread or the nut", name),
         reach_formula(anchor), result.capacity, "in", ""}};
    conclude(result);
    if (result.status != Status::holds) result.note = remedy(anchor, member);
    return result;
}

std::vector<CheckResult> tension_perp(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const catalog::Anchor& anchor = input.resolved.anchors[index];
        if (!lands(anchor) || !catalog::pulls_on_member(anchor)) continue;
        if (!hung_from(input, anchor.seat->member)) continue;
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
