// Shear of a wood post between its fasteners: the couple that holds the guard is a shear far above the push.
//   - Both shears and the twist at one place, as of framing (checks/member/shear_torsion.cpp), with the depth that a
//     notch leaves. The relief NDS 2018 3.4.3.1 gives near a bearing is not taken, nor is it there.
//   - Along the rail the fasteners press across the post's grain near its lower end: NDS 2018 3.4.3.3 with d_e from the
//     side they press towards to the farthest of them, in the worse of both ways. Outward and inward they hold it by
//     washers over its whole depth, and no such part splits off.
#include "catalog/resolve.h"
#include "checks/basis/wood_basis.h"
#include "checks/side/post_cut.h"
#include "checks/side/wood_post.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

struct CutStresses {
    double shear_psi = 0.0, torsion_psi = 0.0;
};

CutStresses stresses(const model::WoodPost& post, double depth_in, const demand::PostCut& cut) {
    const double area_in2 = post.width_in * depth_in;
    return {1.5 * std::hypot(cut.shear_out_lb, cut.shear_along_lb) / area_in2,
            std::abs(cut.twist_lb_in) / resistance::torsion_modulus_in3(post.width_in, depth_in)};
}

bool is_linear(const CheckInput& input) {
    return model::torsion_with_shear(input.resolved.detail.basis) == model::TorsionWithShear::linear_two_thirds;
}

double share_used(const CheckInput& input, const CutStresses& at, double allowable_psi) {
    return is_linear(input) ? resistance::shear_torsion_ratio_linear(at.shear_psi, at.torsion_psi, allowable_psi)
                            : resistance::shear_torsion_share(at.shear_psi, at.torsion_psi, allowable_psi);
}

CheckResult without_grade_for_shear() {
    CheckResult result;
    result.part = {model::PartKind::post};
    lacks_evidence(result, phrase("Post grade is not specified."));
    return result;
}

CheckResult shear_and_twist(const CheckInput& input, const model::WoodPost& post, const WorstCut& worst,
                            const Adjusted& adjusted) {
    const demand::PostCut& cut = cut_of(input, worst);
    const double depth_in = depth_at_in(input.resolved, cut.z_in);
    const CutStresses at = stresses(post, depth_in, cut);
    CheckResult result = cut_result(input, worst, phrase("post shear"));
    result.clause = "NDS 2018 3.4.2";
    result.demand = worst.value;
    result.capacity = 1.0;
    result.steps = {
        {"z", phrase("height of the section above the member's top edge"), "", cut.z_in, "in", "input", Origin::file},
        demanded("V_y", phrase("shear there, outward or inward"), std::abs(cut.shear_out_lb), "lb"),
        demanded("V_x", phrase("shear there, along the rail"), std::abs(cut.shear_along_lb), "lb"),
        demanded("T", phrase("twist there"), std::abs(cut.twist_lb_in), "lb in"),
        {"A", phrase("section area, less a notch"), "b d", post.width_in * depth_in, "in2", "input"},
        {"f_v", phrase("shear stress, combined"), "1.5 sqrt(V_x^2 + V_y^2)/A", at.shear_psi, "psi",
         "NDS 2018 Eq. 3.4-2"},
        {"tau", phrase("torsional stress"), "T/(k a b^2)", at.torsion_psi, "psi", "Saint-Venant"}};
    append(result.steps, allowable_shear_steps(*input.resolved.post_grade, adjusted));
    result.steps.push_back(
        {"R", phrase("combined"),
         is_linear(input) ? "f_v/F_v' + tau/(2/3 F_v'), as the file asks"
                          : "(tau + sqrt(tau^2 + 4 f_v^2))/(2 F_v'): tau/F_v' + (f_v/F_v')^2 at its limit",
         worst.value, "",
         is_linear(input) ? "common practice" : "DIN EN 1995-1-1/NA NCI to 6.1.9 with k_shape 1 (from memory)"});
    conclude(result);
    return result;
}

/// From the side of the post that the fasteners press towards to the farthest of them, in the worse way.
double taken_hold_in(const CheckInput& input, const model::WoodPost& post) {
    double right_in = 0.0, left_in = 0.0;
    bool any = false;
    for (const catalog::Anchor& anchor : input.resolved.anchors) {
        right_in = any ? std::max(right_in, anchor.at.x_in) : anchor.at.x_in;
        left_in = any ? std::max(left_in, -anchor.at.x_in) : -anchor.at.x_in;
        any = true;
    }
    return std::clamp(0.5 * post.width_in + std::min(right_in, left_in), 0.0, post.width_in);
}

bool near_lower_end(const CheckInput& input, const model::WoodPost& post) {
    const double bottom_in = on_side(input.resolved.detail).post_bottom_below_top_in;
    return std::any_of(input.resolved.anchors.begin(), input.resolved.anchors.end(), [&](const catalog::Anchor& one) {
        return bottom_in + one.at.z_in < resistance::near_end_in(post.width_in);
    });
}

CheckResult across_the_grain(const CheckInput& input, const model::WoodPost& post, const WorstCut& worst,
                             const Adjusted& adjusted) {
    const demand::PostCut& cut = cut_of(input, worst);
    const double depth_in = depth_at_in(input.resolved, cut.z_in);
    const double reached_in = taken_hold_in(input, post);
    const bool near = near_lower_end(input, post);
    CheckResult result = cut_result(input, worst, phrase("post shear at its fasteners"));
    result.aspect = "along the rail";
    result.clause = "NDS 2018 3.4.3.3";
    result.unit = "lb";
    result.demand = std::abs(cut.shear_along_lb);
    result.capacity = (near ? resistance::shear_at_fasteners_lb : resistance::shear_at_inner_fasteners_lb)(
        adjusted.value, depth_in, post.width_in, reached_in);
    result.steps = {
        demanded("V_x", phrase("shear of the post between its fasteners, along the rail"), result.demand, "lb"),
        {"b", phrase("depth of the post there, less a notch"), "", depth_in, "in", "input", Origin::file},
        from_file("d", phrase("width of the post"), post.width_in, "in"),
        {"d_e", phrase("side of the post to the farthest fastener, the worse way"), "from the elevation", reached_in,
         "in", "NDS 2018 3.4.3.3"}};
    append(result.steps, allowable_shear_steps(*input.resolved.post_grade, adjusted));
    result.steps.push_back({"V_r'", phrase("allowable shear there"),
                            near ? "2/3 F_v' b d_e (d_e/d)^2: a fastener less than 5 d from the end"
                                 : "2/3 F_v' b d_e: every fastener 5 d or more from the end",
                            result.capacity, "lb",
                            near ? "NDS 2018 Eq. 3.4-6" : "NDS 2018 Eq. 3.4-7 (from memory, to be confirmed)"});
    conclude(result);
    return result;
}

constexpr double nothing_lb_per_in = 1e-3;  // round-off of a 200 lb push is far below

double highest_fastener_in(const CheckInput& input) {
    double highest_in = -model::beyond_any_plate_in;
    for (const catalog::Anchor& anchor : input.resolved.anchors) highest_in = std::max(highest_in, anchor.at.z_in);
    return highest_in;
}

}  // namespace

std::vector<CheckResult> wood_post_shear_at_cuts(const CheckInput& input, const model::WoodPost& post) {
    if (!input.resolved.post_grade) return {without_grade_for_shear()};
    const Adjusted adjusted = adjust_shear(*input.resolved.post_grade, input.resolved.detail.basis);
    std::vector<CheckResult> results;
    const auto combined = worst_cut(input, [&](const demand::PostCut& cut) {
        return share_used(input, stresses(post, depth_at_in(input.resolved, cut.z_in), cut), adjusted.value);
    });
    if (combined) results.push_back(shear_and_twist(input, post, *combined, adjusted));
    const double highest_in = highest_fastener_in(input);
    const auto along = worst_cut(input, [&](const demand::PostCut& cut) {
        return cut.z_in <= highest_in ? std::abs(cut.shear_along_lb) / depth_at_in(input.resolved, cut.z_in) : 0.0;
    });
    if (along && along->value > nothing_lb_per_in && !input.resolved.anchors.empty())
        results.push_back(across_the_grain(input, post, *along, adjusted));
    return results;
}

}  // namespace toehold::checks
