// Every anchor must have framing under it and reach into it, its hole in one piece of wood: decking alone holds nothing
// (IRC 2021 R507.10.1.2 wants the guard fastened to framing or blocking), and neither does a seam.
#include "checks/anchor/anchor_seating.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::checks {
namespace {

constexpr double nothing_lb = 1e-9;

std::string why(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (!anchor.seat)
        return fmt::format("No block, joist or rim is under {}: it holds in the decking only, which is not counted.",
                           subject(anchor));
    const model::Member member = member_of(resolved, anchor);
    if (!within_one_piece(anchor))
        return fmt::format(
            "The hole of {} is not wholly in one piece of {}: {:.4g} in from its centre to the nearest "
            "face, seam or end, and half its diameter is {:.4g} in. It holds nothing there.",
            subject(anchor), model::subject(member), std::min(anchor.seat->edge_in, anchor.seat->end_in),
            0.5 * anchor.diameter_in);
    const double above_in = resolved.detail.plate.thickness_in + (anchor.washer ? anchor.washer->thickness_in : 0.0) +
                            model::thickness_in(resolved.detail.layers);
    return fmt::format("{} is {:.4g} in long and {:.4g} in lie above {}: it does not reach the {}.", subject(anchor),
                       anchor.length_in, above_in, model::subject(member), model::name(member.kind));
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
    result.link = Link{result.subject, "framing", "no wood reached"};
    result.note = why(input.resolved, input.resolved.anchors.at(index));
    result.steps = {
        {pulled ? "T" : "V", pulled ? "largest tension" : "largest shear", "demand", result.demand, "lb", "demand"}};
    return result;
}

/// Where the anchor stands, for a reader to compare with the drawing.
std::vector<Step> place_steps(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const model::Member member = member_of(resolved, anchor);
    const std::string piece = (member.plies > 1 ? "the piece of " : "") + model::subject(member);
    std::vector<Step> steps = {
        {"b", "width of " + piece + ", in which the anchor stands", "given", model::ply_width_in(member), "in",
         "input"},
        {"d", "depth of " + model::subject(member), "given", member.depth_in, "in", "input"},
        {"e", "anchor's centre to the nearer long face or seam", "from the plan", anchor.seat->edge_in, "in", "input"}};
    if (member.length_stated)
        steps.push_back(
            {"e_n", "anchor's centre to the nearer end", "from the plan", anchor.seat->end_in, "in", "input"});
    steps.push_back({"p_e", std::string("length in the ") + model::name(member.kind) + ", tip included",
                     "what lies above is deducted", anchor.embedment_in, "in", "input"});
    return steps;
}

CheckResult seated(const CheckInput& input, std::size_t index) {
    const catalog::Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, false);
    result.unit = "in";
    result.demand = 0.5 * anchor.diameter_in;
    result.capacity = std::min(anchor.seat.value().edge_in, anchor.seat->end_in);
    result.steps = place_steps(input.resolved, anchor);
    result.steps.push_back(
        {"D/2", "half the anchor's diameter: its hole lies in one piece", "D/2", result.demand, "in", "geometry"});
    conclude(result);
    return result;
}

std::vector<CheckResult> anchor_seat(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index)
        results.push_back(lands(input.resolved.anchors[index]) ? seated(input, index) : missed(input, index));
    return results;
}

const RegisterCheck registered{{"anchor-seat", "Framing under the anchor", "IRC 2021 R507.10.1.2",
                                "Every anchor lands in one piece of a block, joist or rim and reaches into it; where "
                                "it stands there.",
                                anchor_seat}};

}  // namespace
}  // namespace toehold::checks
