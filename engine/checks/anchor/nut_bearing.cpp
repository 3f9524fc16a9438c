// A through-bolt's nut pressed into the face of the member on its far side: the underside of what it goes down through.
#include "catalog/anchor_view.h"
#include "checks/anchor/seating.h"
#include "checks/anchor/wood_bearing.h"
#include "demand/demand.h"

namespace toehold::checks {
namespace {

using catalog::Anchor;
using format::phrase;

bool bears_on_metal(const Anchor& anchor) {
    return anchor.kind == catalog::FastenerKind::through_bolt && (anchor.washer_below || anchor.backing);
}

BearingOnWood at_the_nut(const CheckInput& input, const Anchor& anchor) {
    const catalog::MemberMaterial& wood = wood_of(input.resolved, anchor);
    const model::Member member = member_of(input.resolved, anchor);
    return {BearingEnd::nut,
            wood.grade,
            wood.species.specific_gravity,
            member.along,
            {anchor.seat.value().end_in, anchor.seat->edge_in},
            member.depth_in,
            member_name(input.resolved, anchor),
            anchor.diameter_in,
            anchor.head_width_in,
            input.resolved.detail.basis};
}

format::Phrase joined_by(const Anchor& anchor) {
    if (catalog::lies_level(anchor))
        return anchor.backing ? phrase("plate under the nut") : phrase("washer under the nut");
    return anchor.backing ? phrase("backing plate below") : phrase("washer below");
}

CheckResult bearing(const CheckInput& input, std::size_t index) {
    const Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, true);
    result.demand = input.demand.anchors.at(index).tension_lb;
    result.unit = "lb";
    result.link = link_between(result.part, member_part(input.resolved, anchor), joined_by(anchor));
    if (anchor.backing && !anchor.backing_metal) {
        lacks_evidence(result,
                       phrase("The metal of the backing plate is not specified. Give it, so that its spread of the "
                              "bearing can be computed."));
        return result;
    }
    const BearingOnWood on_wood = at_the_nut(input, anchor);
    result.capacity = anchor.backing
                          ? under_plate_lb(on_wood, *anchor.backing, anchor.backing_metal.value(), result.steps)
                          : under_washer_lb(on_wood, anchor.washer_below.value(), result.steps);
    result.steps.push_back(demanded("T_u", phrase("largest tension"), result.demand, "lb"));
    conclude(result);
    return result;
}

std::vector<CheckResult> washer_bearing(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const Anchor& anchor = input.resolved.anchors[index];
        if (bears_on_metal(anchor) && catalog::pulls_on_member(anchor) && lands(anchor))
            results.push_back(bearing(input, index));
    }
    return results;
}

CheckResult pull_through(const CheckInput& input, std::size_t index) {
    const Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, true);
    result.demand = input.demand.anchors.at(index).tension_lb;
    result.unit = "lb";
    result.link = link_between(result.part, member_part(input.resolved, anchor), phrase("nut on the wood"));
    result.capacity = under_bare_head_lb(at_the_nut(input, anchor), result.steps);
    result.steps.push_back(demanded("T_u", phrase("largest tension"), result.demand, "lb"));
    result.note = phrase(
        "The clause is for round heads: the nut's width across flats is taken as the head diameter, with the factors "
        "of withdrawal, and the net area under the nut must take the tension in bearing too.");
    conclude(result);
    return result;
}

std::vector<CheckResult> head_pull_through(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const Anchor& anchor = input.resolved.anchors[index];
        if (bears_on_wood(anchor) && catalog::pulls_on_member(anchor) && lands(anchor))
            results.push_back(pull_through(input, index));
    }
    return results;
}

const RegisterCheck washer_check{
    {"washer-bearing", phrase("Washer or backing plate bearing"), "NDS 2018 3.10.2",
     phrase("A through-bolt's washer or backing plate against the underside of its block, joist or rim."),
     washer_bearing}};
const RegisterCheck pull_through_check{
    {"head-pull-through", phrase("Nut pull-through"), "NDS 2018 12.2.5, 3.10.2",
     phrase("A bolt's nut without a washer, pulled up into its block, joist or rim by the largest tension."),
     head_pull_through}};

}  // namespace
}  // namespace toehold::checks
