// Shear where fasteners hold a member's end, or thick ones hang it on its holder's face: beyond the farthest fastener
// nothing but tension across the grain holds the wood, and NDS 2018 3.4.3.3 answers with a reduced shear strength.
//   - Less than five depths from the member's end Eq. 3.4-6 holds, with the square of d_e/d; farther in Eq. 3.4-7.
//   - Pressed down, the member is carried by fasteners that press up: d_e runs from its top down to the lowest. Drawn
//     up, they press down: from its bottom up to the highest. In its holder it is the other way round.
//   - A holder's shear from one connection is no more than that connection brings.
//   - Hardware of a report may tell where its fasteners stand. Where it does not, that they reach mid-depth is all that
//     is taken for granted; if that does not do, the file must say more: nothing fails for what is not known.
#include "catalog/resolve.h"
#include "checks/basis/wood_basis.h"
#include "checks/connection/fastener_reach.h"
#include "checks/member/actions.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

/// One piece of wood the fasteners of one place stand in, pushed one way.
struct FastenedSide {
    const model::Member& member;
    const catalog::LumberGrade& grade;
    bool holder = false;
    bool pressed_down = false;         ///< the held member is
    std::optional<double> reached_in;  ///< d_e; absent: not known
    bool through = true;
    double to_end_in = 0.0;  ///< of the piece, along its grain
};

double force_lb(const FastenedSide& side, const demand::SupportReaction& forces) {
    return side.pressed_down ? std::max({forces.down_lb, -forces.up_lb, 0.0}) : std::max(forces.up_lb, 0.0);
}

/// Of a holder no more than acts in it.
demand::GoverningState largest_shear(const CheckInput& input, const EndPlace& place, const FastenedSide& side) {
    const PlaceForces forces(input, place);
    demand::GoverningState largest;
    for (std::size_t state = 0; state < forces.states(); ++state) {
        double shear = force_lb(side, forces.in(state));
        if (shear <= largest.value) continue;
        if (side.holder)
            shear = std::min(shear, actions_of(input, state, place.support->holder.value()).vertical_shear_lb);
        if (shear > largest.value) largest = {shear, state};
    }
    return largest;
}

bool near_end(const FastenedSide& side) { return side.to_end_in < resistance::near_end_in(side.member.depth_in); }

double width_in(const FastenedSide& side) {
    return side.through ? side.member.width_in : model::ply_width_in(side.member);
}

double strength_lb(const FastenedSide& side, double allowable_psi, double reached_in) {
    const auto strength = near_end(side) ? resistance::shear_at_fasteners_lb : resistance::shear_at_inner_fasteners_lb;
    return strength(allowable_psi, width_in(side), side.member.depth_in, reached_in);
}

double mid_depth_in(const FastenedSide& side) { return 0.5 * side.member.depth_in; }

/// The least depth that would do for the force, in.
double needed_in(const FastenedSide& side, double allowable_psi, double shear) {
    if (near_end(side)) return resistance::needed_reach_in(shear, allowable_psi, width_in(side), side.member.depth_in);
    const double per_in = resistance::shear_at_inner_fasteners_lb(allowable_psi, width_in(side), side.member.depth_in,
                                                                  side.member.depth_in) /
                          side.member.depth_in;
    return shear / per_in;
}

format::Phrase reach_meaning(const FastenedSide& side) {
    const bool from_top = side.pressed_down != side.holder;
    return from_top ? phrase("effective depth: top to the lowest fastener")
                    : phrase("effective depth: bottom to the highest fastener");
}

/// The file must say where the fasteners stand.
void ask_for_reach(CheckResult& result, const FastenedSide& side, double needed) {
    const bool seat = side.pressed_down && !side.holder;
    lacks_evidence(
        result,
        seat ? phrase("Where the hardware's fasteners stand is not specified. For this force they must reach {} below "
                      "the member's top. Give `from-bottom` of the connector: bottom edge up to the lowest fastener, "
                      "0 for a seat.",
                      Dimension{needed})
             : phrase("Where the hardware's fasteners stand is not specified. For this force they must reach {} of the "
                      "member's depth. Give `from-top` of the connector: top edge down to the highest fastener.",
                      Dimension{needed}));
}

void add_reach(CheckResult& result, const FastenedSide& side, const FastenerReach& reach, double reached_in) {
    if (side.reached_in) {
        result.steps.push_back(
            {"d_e", reach_meaning(side), "from the fasteners' places", reached_in, "in", "NDS 2018 3.4.3.3"});
        result.note = phrase("Taken: {}.", reach.where);
    } else {
        result.steps.push_back(
            {"d_e", reach_meaning(side), "not specified: mid-depth", reached_in, "in", "assumption"});
        result.note = phrase(
            "Where the hardware's fasteners stand is not specified. Assumed: they reach mid-depth at "
            "least.");
    }
}

CheckResult side_result(const CheckInput& input, const EndPlace& place, const FastenedSide& side, std::size_t state) {
    CheckResult result = end_result(input, place, state, phrase("shear at the fasteners"));
    if (!side.holder) {
        result.aspect = "held end";
        return result;
    }
    const model::PartId member = model::part_of(place.member), holder = place.held_by;
    result.part = model::held_at(holder, member);
    result.link =
        link_between(holder, {holder.kind, holder.id, model::PartPiece::supports}, phrase("shear at the fasteners"));
    result.aspect = "holder";
    return result;
}

CheckResult check(const CheckInput& input, const EndPlace& place, const FastenedSide& side, const FastenerReach& reach,
                  const demand::GoverningState& worst) {
    const Adjusted adjusted = adjust_shear(side.grade, input.resolved.detail.basis);
    const double reached_in = side.reached_in.value_or(mid_depth_in(side));
    CheckResult result = side_result(input, place, side, worst.state);
    result.unit = "lb";
    result.demand = worst.value;
    result.capacity = strength_lb(side, adjusted.value, reached_in);
    result.steps = {demanded("V",
                             side.pressed_down ? phrase("shear there, member pressed down")
                                               : phrase("shear there, member drawn up"),
                             worst.value, "lb"),
                    from_file("b", phrase("width of the pieces the fasteners stand in"), width_in(side), "in"),
                    from_file("d", phrase("depth of {}", model::part_name(model::part_of(side.member))),
                              side.member.depth_in, "in")};
    add_reach(result, side, reach, reached_in);
    append(result.steps, allowable_shear_steps(side.grade, adjusted));
    result.steps.push_back(
        {"V_r'", phrase("allowable shear there"),
         near_end(side) ? "2/3 F_v' b d_e (d_e/d)^2: less than 5 d from its end"
                        : "2/3 F_v' b d_e: 5 d or more from its end",
         result.capacity, "lb",
         near_end(side) ? "NDS 2018 Eq. 3.4-6" : "NDS 2018 Eq. 3.4-7 (from memory, to be confirmed)"});
    conclude(result);
    if (!side.reached_in && result.status == Status::fails)
        ask_for_reach(result, side, needed_in(side, adjusted.value, worst.value));
    return result;
}

/// Distance of a place to the nearer end of the member that runs through it; 0 where its ends are not described.
double to_end_in(const model::Member& member, double at_in) {
    return member.length_stated ? std::max(0.0, std::min(at_in - member.from_in, member.to_in - at_in)) : 0.0;
}

FastenedSide held_side(const CheckInput& input, const EndPlace& place, const FastenerReach& reach, bool pressed_down) {
    FastenedSide side{place.member, place.wood->grade, false, pressed_down, {}, reach.through, 0.0};
    const double depth_in = place.member.depth_in;
    if (pressed_down && reach.lowest_in) side.reached_in = *reach.lowest_in;
    if (!pressed_down && reach.highest_in) side.reached_in = depth_in - *reach.highest_in;
    if (place.support->joist_support) {
        const double at_in = input.resolved.detail.framing.supports.at(*place.support->joist_support).at_in;
        side.to_end_in = to_end_in(place.member, at_in);
    }
    return side;
}

FastenedSide holder_side(const CheckInput& input, const EndPlace& place, const model::Member& holder,
                         const FastenerReach& reach, bool pressed_down) {
    const catalog::LumberGrade& grade = catalog::wood(input.resolved, place.support->holder.value()).grade;
    FastenedSide side{
        holder, grade, true, pressed_down, {}, reach.through_holder, to_end_in(holder, place.member.across_in)};
    if (pressed_down && reach.highest_in) side.reached_in = holder.depth_in - *reach.highest_in;
    if (!pressed_down && reach.lowest_in) side.reached_in = *reach.lowest_in;
    if (side.reached_in) side.reached_in = std::clamp(*side.reached_in, 0.0, holder.depth_in);
    return side;
}

/// The worse of pressed down and drawn up; none where neither force counts.
std::optional<CheckResult> worse(const CheckInput& input, const EndPlace& place, const FastenerReach& reach,
                                 const std::vector<FastenedSide>& sides) {
    std::optional<CheckResult> worst;
    for (const FastenedSide& side : sides) {
        const demand::GoverningState largest = largest_shear(input, place, side);
        if (largest.value <= no_force_lb) continue;
        CheckResult result = check(input, place, side, reach, largest);
        const auto rank = [](const CheckResult& one) {
            return one.status == Status::missing_evidence ? 1.0 : one.ratio;
        };
        if (!worst || rank(result) > rank(*worst)) worst = std::move(result);
    }
    return worst;
}

std::vector<CheckResult> member_end_shear(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const EndPlace& place : end_places(input)) {
        const std::optional<FastenerReach> reach = fastener_reach(place);
        if (!reach) continue;
        // On a beam the member bears when pressed down.
        std::vector<FastenedSide> held{held_side(input, place, *reach, false)};
        if (!place.on_beam) held.push_back(held_side(input, place, *reach, true));
        if (auto result = worse(input, place, *reach, held)) results.push_back(std::move(*result));
        if (!place.support->holder || !reach->in_holder) continue;
        const model::Member holder = model::member(input.resolved.detail.framing, *place.support->holder);
        const std::vector<FastenedSide> in_holder{holder_side(input, place, holder, *reach, false),
                                                  holder_side(input, place, holder, *reach, true)};
        if (auto result = worse(input, place, *reach, in_holder)) results.push_back(std::move(*result));
    }
    return results;
}

const RegisterCheck registered{
    {"member-end-shear", phrase("Framing shear at its connections"), "NDS 2018 3.4.3.3",
     phrase("The shear of each member where fasteners hold it or hang another on it, with the depth they take hold "
            "of."),
     member_end_shear}};

}  // namespace
}  // namespace toehold::checks
