// An anchor's head drawn across the grain into a wood post: on its washer, on the plate under it, or on the wood
// itself. A reported fastener without either has a head its report speaks for, in its own tension.
#include "catalog/fastened.h"
#include "checks/anchor/seating.h"
#include "checks/anchor/wood_bearing.h"
#include "demand/demand.h"

#include <cmath>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using catalog::FastenerKind;
using format::phrase;

bool bears_by_itself(const Anchor& anchor) { return !anchor.washer && !anchor.head_plate; }

BearingEnd end_of(const Anchor& anchor) {
    switch (anchor.kind) {
        case FastenerKind::lag_screw:
            return BearingEnd::screw_head;
        case FastenerKind::wood_screw:
            return BearingEnd::round_head;
        default:
            return BearingEnd::head;
    }
}

/// `post` must outlive the result.
BearingOnWood under_head(const CheckInput& input, const Anchor& anchor, const catalog::SideMember& post) {
    const catalog::MemberMaterial& wood = post.wood.value();
    const double to_end_in = on_side(input.resolved.detail).post_bottom_below_top_in + anchor.at.z_in;
    return {end_of(anchor),
            wood.grade,
            wood.species.specific_gravity,
            model::PlanAxis::y,
            {to_end_in, 0.5 * post.width_x_in - std::abs(anchor.at.x_in)},
            post.thickness_in,
            phrase("post"),
            anchor.diameter_in,
            anchor.head_width_in,
            input.resolved.detail.basis};
}

format::Phrase joined_by(const Anchor& anchor) {
    if (anchor.head_plate) return phrase("plate under the head");
    return anchor.washer ? phrase("washer under the head") : phrase("head on the wood");
}

CheckResult head_result(const CheckInput& input, std::size_t index, const catalog::SideMember& post) {
    const Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, true);
    result.unit = "lb";
    result.demand = input.demand.anchors.at(index).tension_lb;
    result.link = link_between({model::PartKind::post}, result.part, joined_by(anchor));
    if (anchor.head_plate && !anchor.head_plate_metal) {
        lacks_evidence(result, phrase("The metal of the plate under the head is not specified. Give it, so that its "
                                      "spread of the bearing can be computed."));
        return result;
    }
    const BearingOnWood bearing = under_head(input, anchor, post);
    if (anchor.head_plate) {
        result.capacity = under_plate_lb(bearing, *anchor.head_plate, *anchor.head_plate_metal, result.steps);
    } else if (anchor.washer) {
        result.capacity = under_washer_lb(bearing, *anchor.washer, result.steps);
    } else {
        result.clause = "NDS 2018 12.2.5, 3.10.2";
        result.capacity = under_bare_head_lb(bearing, result.steps);
        if (bearing.end != BearingEnd::round_head)
            result.note = phrase(
                "The clause is for round heads: of a hexagon the width across flats is taken as the head's diameter, "
                "with the factors of withdrawal, and the net area under the head must take the tension in bearing "
                "too.");
    }
    result.steps.push_back(demanded("T_u", phrase("largest tension"), result.demand, "lb"));
    conclude(result);
    return result;
}

std::vector<CheckResult> head_bearing(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const Anchor& anchor = input.resolved.anchors[index];
        const catalog::SideMember post = catalog::fastened_by(input.resolved, anchor).side;
        if (!post.wood || !lands(anchor)) continue;
        if (bears_by_itself(anchor) && (anchor.kind == FastenerKind::reported || !(anchor.head_width_in > 0.0)))
            continue;
        results.push_back(head_result(input, index, post));
    }
    return results;
}

const RegisterCheck registered{
    {"side-head-bearing", phrase("Head or washer bearing on the post"), "NDS 2018 3.10.2",
     phrase("Each anchor's head, washer or plate against the side of a wood post, across its grain."), head_bearing},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
