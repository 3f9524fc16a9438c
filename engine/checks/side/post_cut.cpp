#include "checks/side/post_cut.h"

#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "model/side_geometry.h"
#include "resistance/wood/drilled_section.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::checks {
namespace {

using format::phrase;

constexpr double one_height_in = 0.05;

}  // namespace

const demand::PostCut& cut_of(const CheckInput& input, const WorstCut& worst) {
    return input.demand.states.at(worst.state).cuts.at(worst.cut);
}

CheckResult cut_result(const CheckInput& input, const WorstCut& worst, format::Phrase by) {
    CheckResult result;
    result.part = {model::PartKind::post};
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.link = link_between({model::PartKind::guard}, result.part, std::move(by));
    return result;
}

std::vector<Step> cut_steps(const demand::PostCut& cut) {
    return {
        {"z", phrase("height of the section above the member's top edge"), "", cut.z_in, "in", "input", Origin::file},
        demanded("M_x", phrase("moment there, outward or inward"), std::abs(cut.bending_out_lb_in), "lb in"),
        demanded("M_y", phrase("moment there, along the rail"), std::abs(cut.bending_along_lb_in), "lb in")};
}

std::vector<const catalog::Anchor*> drilled_at(const catalog::Resolved& resolved, double z_in) {
    std::vector<const catalog::Anchor*> there, found;
    if (on_side(resolved.detail).bracket) return found;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (std::abs(anchor.at.z_in - z_in) <= one_height_in) there.push_back(&anchor);
    }
    if (there.empty()) return found;
    found = there;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const double apart_in = std::abs(anchor.at.z_in - z_in);
        if (apart_in <= one_height_in || apart_in >= resistance::one_section_in(anchor.diameter_in)) continue;
        const bool line_of_its_own = std::none_of(found.begin(), found.end(), [&](const catalog::Anchor* one) {
            return std::abs(one->at.x_in - anchor.at.x_in) < anchor.diameter_in;
        });
        if (line_of_its_own) found.push_back(&anchor);
    }
    return found;
}

double depth_at_in(const catalog::Resolved& resolved, double z_in) {
    const double whole_in = model::shaft(resolved.detail.post).depth_in;
    const auto& notch = on_side(resolved.detail).notch;
    return notch && z_in <= -notch->below_top_in + one_height_in ? whole_in - notch->depth_in : whole_in;
}

}  // namespace toehold::checks
