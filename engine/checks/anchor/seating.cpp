// Also the check that every anchor has framing under it and reaches into it, its hole in one piece of wood: decking
// alone holds nothing (IRC 2021 R507.10.1.2 wants the guard fastened to framing or blocking), and neither does a seam.
#include "checks/anchor/seating.h"

#include "catalog/anchor_view.h"
#include "catalog/fastened.h"
#include "demand/demand.h"
#include "resistance/wood/withdrawal.h"
#include "units/limit.h"

#include <algorithm>
#include <limits>
#include <numbers>

namespace toehold::checks {

using format::Dimension;
using format::phrase;

bool bears_on_wood(const catalog::Anchor& anchor) {
    return anchor.kind == catalog::FastenerKind::through_bolt && !anchor.washer_below && !anchor.backing &&
           !anchor.lower;
}

bool within_one_piece(const catalog::Anchor& anchor) {
    const model::Seat& seat = anchor.seat.value();
    return units::at_least(std::min(seat.edge_in, seat.end_in), 0.5 * anchor.diameter_in);
}

bool lands(const catalog::Anchor& anchor) {
    return anchor.seat.has_value() && within_one_piece(anchor) && anchor.embedment_in > 0.0;
}

double grain_slope_rad(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const auto* const mount = std::get_if<model::SideFastened>(&resolved.detail.mount);
    if (mount == nullptr || !mount->stringer || !anchor.seat) return 0.0;
    if (model::find_member(resolved.detail.framing, mount->member) != anchor.seat->member) return 0.0;
    return mount->stringer->angle_deg * std::numbers::pi / 180.0;
}

Seating seating(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    Seating result;
    const catalog::Fastened fastened = catalog::fastened_by(resolved, anchor);
    result.plate_in = fastened.side.thickness_in;
    result.washer_in = anchor.head_plate ? anchor.head_plate->thickness_in
                       : anchor.washer   ? anchor.washer->thickness_in
                                         : 0.0;
    result.layers_in = fastened.layers_in();
    result.above_member_in = result.plate_in + result.washer_in + result.layers_in;
    result.embedment_in = anchor.embedment_in;
    result.thread_in_member_in = anchor.thread_in_block_in;
    result.tip_in_member_in = resistance::tip_in_block_in(anchor.length_in, anchor.tip_length_in,
                                                          result.above_member_in, member_of(resolved, anchor).depth_in);
    return result;
}

model::Member member_of(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    return catalog::seen_member(resolved, anchor);
}

const catalog::MemberMaterial& wood_of(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    return catalog::wood(resolved, anchor.seat.value().member);
}

model::PartId part_of(const catalog::Anchor& anchor) { return model::anchor_part(anchor.id); }

model::PartId member_part(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    return model::part_of(model::member(resolved.detail.framing, anchor.seat.value().member));
}

format::Phrase member_name(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    return model::part_name(member_part(resolved, anchor));
}

format::Phrase side_name(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (!catalog::lies_level(anchor)) return phrase("plate");
    return model::main_part(resolved.detail).kind == model::PartKind::post ? phrase("post") : phrase("bracket plate");
}

namespace {

/// How the length in the member comes about.
const char* embedment_formula(const catalog::Anchor& anchor) {
    return catalog::lies_level(anchor) ? "L less all before it, at most its width"
                                       : "L less all above, at most its depth";
}

}  // namespace

std::vector<Step> embedment_steps(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const Seating seated = seating(resolved, anchor);
    std::vector<Step> steps;
    steps.push_back(from_file("L", phrase("length under the head, tip included"), anchor.length_in, "in"));
    steps.push_back(from_file("t_p", side_name(resolved, anchor), seated.plate_in, "in"));
    if (seated.washer_in > 0.0)
        steps.push_back(from_file("t_w",
                                  anchor.head_plate ? phrase("plate under the head") : phrase("washer under the head"),
                                  seated.washer_in, "in"));
    if (seated.layers_in > 0.0) {
        steps.push_back(from_file("t_l",
                                  catalog::lies_level(anchor)
                                      ? phrase("what lies between post and member; thread in it is not counted")
                                      : phrase("decking and shims; thread in them is not counted"),
                                  seated.layers_in, "in"));
    }
    steps.push_back({"p_e", phrase("length in {}, tip included", member_name(resolved, anchor)),
                     embedment_formula(anchor), seated.embedment_in, "in", ""});
    return steps;
}

CheckResult anchor_result(const CheckInput& input, std::size_t anchor, bool pulled) {
    CheckResult result;
    result.part = part_of(input.resolved.anchors.at(anchor));
    if (pulled) result.direction_deg = degrees(input.demand.anchors.at(anchor).direction_rad);
    return result;
}

namespace {

constexpr double nothing_lb = 1e-9;

/// Of an anchor that lies level: it is driven into the member's side.
format::Phrase why_from_the_side(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (!anchor.seat)
        return phrase(
            "Anchor {} misses the member behind the post: it passes above, below or beside it. Move the anchor, or use "
            "a deeper member.",
            anchor.id);
    const format::Phrase member = member_name(resolved, anchor);
    if (!within_one_piece(anchor))
        return phrase(
            "The hole of anchor {} is not wholly in one piece of {}: its center is {} from the nearest edge, seam or "
            "end, and half its diameter is {}. Move the anchor or the framing.",
            anchor.id, member, Dimension{std::min(anchor.seat->edge_in, anchor.seat->end_in)},
            Dimension{0.5 * anchor.diameter_in});
    return phrase("Anchor {} does not reach {}: it is {} long and {} lie before it. Use a longer anchor.", anchor.id,
                  member, Dimension{anchor.length_in}, Dimension{catalog::above_member_in(resolved, anchor)});
}

format::Phrase why(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (catalog::lies_level(anchor)) return why_from_the_side(resolved, anchor);
    if (!anchor.seat)
        return phrase(
            "Anchor {} misses the framing: no block, joist or rim is under it, and decking alone does not count. Add a "
            "block under it.",
            anchor.id);
    const format::Phrase member = member_name(resolved, anchor);
    if (!within_one_piece(anchor) && member_of(resolved, anchor).plies > 1)
        return phrase(
            "The hole of anchor {} is not wholly in one piece of {}: its center is {} from the nearest face, seam or "
            "end, and half its diameter is {}. Move the member sideways by half a piece, so that the row stands in "
            "one piece, or use a solid piece.",
            anchor.id, member, Dimension{std::min(anchor.seat->edge_in, anchor.seat->end_in)},
            Dimension{0.5 * anchor.diameter_in});
    if (!within_one_piece(anchor))
        return phrase(
            "The hole of anchor {} is not wholly in one piece of {}: its center is {} from the nearest face, seam or "
            "end, and half its diameter is {}. Move the anchor or the framing.",
            anchor.id, member, Dimension{std::min(anchor.seat->edge_in, anchor.seat->end_in)},
            Dimension{0.5 * anchor.diameter_in});
    const double above_in = catalog::above_member_in(resolved, anchor);
    return phrase("Anchor {} does not reach {}: it is {} long and {} lie above the framing. Use a longer anchor.",
                  anchor.id, member, Dimension{anchor.length_in}, Dimension{above_in});
}

/// A post on a member's side has a clause of its own.
void name_by_view(CheckResult& result, const CheckInput& input, const catalog::Anchor& anchor) {
    if (!catalog::lies_level(anchor)) return;
    result.title = phrase("Framing behind the anchor");
    result.clause =
        model::clause(model::building_code(input.resolved.detail.basis), model::Provision::guard_beside_framing);
}

/// Nothing under the anchor: the result stays without a path even where the solve put no force on it, for the plate
/// was given that anchor to be held by it.
CheckResult missed(const CheckInput& input, std::size_t index) {
    const demand::AnchorEnvelope& meets = input.demand.anchors.at(index);
    CheckResult result = anchor_result(input, index, true);
    const bool pulled = meets.tension_lb > nothing_lb;
    result.demand = pulled ? meets.tension_lb : meets.shear_lb;
    result.capacity = 0.0;
    result.unit = "lb";
    result.ratio = std::numeric_limits<double>::infinity();
    result.status = Status::no_path;
    result.link = link_between(result.part, {model::PartKind::framing}, phrase("no framing reached"));
    result.note = why(input.resolved, input.resolved.anchors.at(index));
    name_by_view(result, input, input.resolved.anchors.at(index));
    result.steps = {demanded(pulled ? "T" : "V", pulled ? phrase("largest tension") : phrase("largest shear"),
                             result.demand, "lb")};
    return result;
}

/// The member's own width and depth, as the drawing has them.
std::vector<Step> member_steps(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const model::Member member = member_of(resolved, anchor);
    const format::Phrase name = member_name(resolved, anchor);
    if (catalog::lies_level(anchor)) {
        return {from_file("b", phrase("width of {}", name), member.depth_in, "in"),
                from_file("d",
                          member.plies > 1 ? phrase("depth of the piece of {} that the anchor is in", name)
                                           : phrase("depth of {}", name),
                          model::ply_width_in(member), "in")};
    }
    return {from_file("b",
                      member.plies > 1 ? phrase("width of the piece of {} that the anchor is in", name)
                                       : phrase("width of {}", name),
                      model::ply_width_in(member), "in"),
            from_file("d", phrase("depth of {}", name), member.depth_in, "in")};
}

/// Where the anchor stands, for a reader to compare with the drawing.
std::vector<Step> place_steps(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const char* const seen_in = catalog::lies_level(anchor) ? "from the elevation" : "from the plan";
    std::vector<Step> steps = member_steps(resolved, anchor);
    steps.push_back({"e",
                     catalog::lies_level(anchor) ? phrase("anchor's center to the nearer edge or seam")
                                                 : phrase("anchor's center to the nearer long face or seam"),
                     seen_in, anchor.seat->edge_in, "in", "input", Origin::file});
    if (member_of(resolved, anchor).length_stated)
        steps.push_back({"e_n", phrase("anchor's center to the nearer end"), seen_in, anchor.seat->end_in, "in",
                         "input", Origin::file});
    steps.push_back({"p_e", phrase("length in {}, tip included", member_name(resolved, anchor)),
                     embedment_formula(anchor), anchor.embedment_in, "in", "input"});
    return steps;
}

CheckResult seated(const CheckInput& input, std::size_t index) {
    const catalog::Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, false);
    name_by_view(result, input, anchor);
    result.unit = "in";
    result.demand = 0.5 * anchor.diameter_in;
    result.capacity = std::min(anchor.seat.value().edge_in, anchor.seat->end_in);
    result.steps = place_steps(input.resolved, anchor);
    result.steps.push_back({"D/2", phrase("half the anchor's diameter: its hole is in one piece"), "D/2", result.demand,
                            "in", "geometry"});
    conclude(result);
    return result;
}

std::vector<CheckResult> anchor_seat(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index)
        results.push_back(lands(input.resolved.anchors[index]) ? seated(input, index) : missed(input, index));
    return results;
}

const RegisterCheck registered{{"anchor-seat",
                                phrase("Framing under the anchor"),
                                "",
                                phrase("Every anchor is in one piece of a block, joist or rim and reaches into it."),
                                anchor_seat,
                                // An anchor without wood holds nominally, and leaves its share to the others.
                                {"anchor-penetration", "anchor-withdrawal", "anchor-lateral", "anchor-combined",
                                 "anchor-steel-tension", "anchor-steel-combined", "washer-bearing", "head-pull-through",
                                 "member-tension-perp", "plate-bending", "bearing-decking", "bearing-framing"},
                                {},
                                model::Provision::guard_on_decking}};

}  // namespace
}  // namespace toehold::checks
