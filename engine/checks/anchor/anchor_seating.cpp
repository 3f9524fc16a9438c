#include "checks/anchor/anchor_seating.h"

#include "resistance/wood/withdrawal.h"

#include <algorithm>

namespace toehold::checks {

bool bears_on_wood(const catalog::Anchor& anchor) {
    return anchor.kind == catalog::FastenerKind::through_bolt && !anchor.washer_below && !anchor.backing;
}

bool within_one_piece(const catalog::Anchor& anchor) {
    constexpr double rounding_in = 1e-9;
    const model::Seat& seat = anchor.seat.value();
    return std::min(seat.edge_in, seat.end_in) + rounding_in >= 0.5 * anchor.diameter_in;
}

bool lands(const catalog::Anchor& anchor) {
    return anchor.seat.has_value() && within_one_piece(anchor) && anchor.embedment_in > 0.0;
}

Seating seating(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    Seating result;
    result.plate_in = resolved.detail.plate.thickness_in;
    result.washer_in = anchor.washer ? anchor.washer->thickness_in : 0.0;
    result.layers_in = model::thickness_in(resolved.detail.layers);
    result.above_member_in = result.plate_in + result.washer_in + result.layers_in;
    result.embedment_in = anchor.embedment_in;
    result.thread_in_member_in = anchor.thread_in_block_in;
    result.tip_in_member_in = resistance::tip_in_block_in(anchor.length_in, anchor.tip_length_in,
                                                          result.above_member_in, member_of(resolved, anchor).depth_in);
    return result;
}

model::Member member_of(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    return model::member(resolved.detail.framing, anchor.seat.value().member);
}

const catalog::MemberMaterial& wood_of(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    return catalog::wood(resolved, anchor.seat.value().member);
}

std::string kind_under(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    return model::name(member_of(resolved, anchor).kind);
}

std::string subject(const catalog::Anchor& anchor) { return "anchor " + anchor.id; }

std::vector<Step> embedment_steps(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const Seating seated = seating(resolved, anchor);
    const std::string kind = kind_under(resolved, anchor);
    std::vector<Step> steps;
    steps.push_back({"L", "length under the head, tip included", "given", anchor.length_in, "in", "input"});
    steps.push_back({"t_p", "plate", "given", seated.plate_in, "in", "input"});
    if (seated.washer_in > 0.0)
        steps.push_back({"t_w", "washer under the head", "given", seated.washer_in, "in", "input"});
    if (seated.layers_in > 0.0) {
        steps.push_back(
            {"t_l", "decking and shims: no thread in them is counted", "given", seated.layers_in, "in", "input"});
    }
    steps.push_back({"p_e", "length in the " + kind + ", tip included",
                     "L less all above the " + kind + ", at most its depth", seated.embedment_in, "in", ""});
    return steps;
}

CheckResult anchor_result(const CheckInput& input, std::size_t anchor, bool pulled) {
    CheckResult result;
    result.subject = subject(input.resolved.anchors.at(anchor));
    if (pulled) result.direction_deg = degrees(input.demand.anchors.at(anchor).direction_rad);
    return result;
}

}  // namespace toehold::checks
