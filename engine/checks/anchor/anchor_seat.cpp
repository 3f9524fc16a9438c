// Every anchor must have a block under it and reach into it: decking alone holds nothing (IRC 2021 R507.10.1.2 wants
// the guard fastened to framing or blocking).
#include "checks/anchor/anchor_seating.h"

#include <fmt/format.h>

#include <cmath>
#include <limits>

namespace toehold::checks {
namespace {

constexpr double nothing_lb = 1e-9;

std::string why(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (!anchor.seat)
        return fmt::format("No block is under {}: it holds in the decking only, which is not counted.",
                           subject(anchor));
    const double above_in = resolved.detail.plate.thickness_in + (anchor.washer ? anchor.washer->thickness_in : 0.0) +
                            model::thickness_in(resolved.detail.layers);
    return fmt::format("{} is {:.4g} in long and {:.4g} in lie above {}: it does not reach the block.", subject(anchor),
                       anchor.length_in, above_in, subject(member_of(resolved, anchor)));
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
    result.link = Link{result.subject, "framing", "no block reached"};
    result.note = why(input.resolved, input.resolved.anchors.at(index));
    result.steps = {
        {pulled ? "T" : "V", pulled ? "largest tension" : "largest shear", "demand", result.demand, "lb", "demand"}};
    return result;
}

std::vector<CheckResult> anchor_seat(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        if (!lands(input.resolved.anchors[index])) results.push_back(missed(input, index));
    }
    return results;
}

const RegisterCheck registered{{"anchor-seat", "Block under the anchor", "IRC 2021 R507.10.1.2",
                                "Every anchor lands on a block and reaches into it.", anchor_seat}};

}  // namespace
}  // namespace toehold::checks
