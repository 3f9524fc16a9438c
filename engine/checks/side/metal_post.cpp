#include "checks/side/metal_post.h"

#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/post/foot.h"
#include "checks/post/metal_strength.h"
#include "checks/side/post_cut.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/drilled_post.h"
#include "resistance/steel/shear.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::checks {
namespace {

using format::phrase;

namespace steel = resistance::steel;
using catalog::MetalKind;

/// The post with its metal as it is where a bracket is welded to it, if any.
struct MetalPost {
    PostFoot foot;
    Welding welding;
    BesideWeld used;
    double wall_in = 0.0;  ///< to design with
    steel::TubeSection section;
};

MetalPost metal_post(const CheckInput& input) {
    const catalog::Metal& metal = input.resolved.post_metal;
    MetalPost post;
    post.foot = post_foot(input.resolved.detail.post);
    const bool bracket = on_side(input.resolved.detail).bracket.has_value();
    const auto& filler = on_side(input.resolved).filler;
    post.welding = {bracket, filler ? &*filler : nullptr, post.foot.thickness_in};
    post.used = strengths(metal, post.welding);
    const bool whole_wall = post.foot.solid || metal.kind == MetalKind::aluminum;
    post.wall_in =
        whole_wall ? post.foot.piece.wall_in : steel::design_wall_in(post.foot.piece.wall_in, metal.full_wall);
    post.section = section_to_design(post.foot.piece, post.foot.solid, metal);
    return post;
}

steel::LeftAtHoles left_at(const CheckInput& input, const MetalPost& post, double z_in) {
    std::vector<steel::PostHole> holes;
    for (const catalog::Anchor* anchor : drilled_at(input.resolved, z_in))
        holes.push_back({anchor->at.x_in, anchor->hole_diameter_in});
    if (holes.empty()) return {};
    return steel::left_at_holes(post.foot.piece, post.foot.solid, post.wall_in, post.section, post.used.yield_psi,
                                post.used.ultimate_psi, holes);
}

/// Moment it takes in that direction beside the axial force, lb in. At holes the two axes count in a linear sum.
double capacity_lb_in(const MetalStrength& strength, const steel::LeftAtHoles& left, const demand::PostCut& cut) {
    const double x = std::abs(cut.bending_out_lb_in), y = std::abs(cut.bending_along_lb_in);
    const double beside_axial =
        steel::moment_share_beside_axial(strength.axial_lb > 0.0 ? std::abs(cut.down_lb) / strength.axial_lb : 0.0);
    if (left.about_x >= 1.0 && left.about_y >= 1.0) return beside_axial * moment_capacity_lb_in(strength, x, y);
    const double share =
        ratio(x, left.about_x * strength.about_x_lb_in) + ratio(y, left.about_y * strength.about_y_lb_in);
    return share > 0.0 ? beside_axial * std::hypot(x, y) / share : beside_axial * strength.about_x_lb_in;
}

std::vector<Step> hole_steps(const MetalStrength& strength, const steel::LeftAtHoles& left) {
    if (left.about_x >= 1.0 && left.about_y >= 1.0) return {};
    return {{"k_x", phrase("share of the moment about x left at the holes"),
             "Z net of the holes over Z, or the tension wall's rupture", left.about_x, "", "AISC 360-16 F13.1"},
            {"k_y", phrase("share of the moment about y left at the holes"), "Z net of the holes over Z", left.about_y,
             "", "AISC 360-16 F13.1"},
            {"M_cx", phrase("available moment about x at the holes"), "k_x M_n_x, ASD or LRFD",
             left.about_x * strength.about_x_lb_in, "lb in", ""},
            {"M_cy", phrase("available moment about y at the holes"), "k_y M_n_y, ASD or LRFD",
             left.about_y * strength.about_y_lb_in, "lb in", ""}};
}

// Shear of the walls and twist.

struct ShearStrength {
    double along_x_lb = 0.0, along_y_lb = 0.0;  ///< usable
    double twist_lb_in = 0.0;
    std::string clause;
    std::vector<Step> steps;
};

/// 0.60 F_y on the area that Bredt's thin tube encloses, H3.1; of a bar at its elastic peak.
double twist_nominal_lb_in(const MetalPost& post) {
    const steel::TubeShape& shape = post.foot.piece;
    const double psi = 0.60 * post.used.yield_psi;
    if (shape.round) {
        const double inside = post.foot.solid ? 0.0 : 1.0 - 2.0 * post.wall_in / shape.width_in;
        return psi * std::numbers::pi / 16.0 * std::pow(shape.width_in, 3) * (1.0 - std::pow(inside, 4));
    }
    if (post.foot.solid) return psi * resistance::torsion_modulus_in3(shape.width_in, shape.depth_in);
    return psi * 2.0 * (shape.width_in - post.wall_in) * (shape.depth_in - post.wall_in) * post.wall_in;
}

ShearStrength shear_strength(const CheckInput& input, const MetalPost& post) {
    const catalog::Metal& metal = input.resolved.post_metal;
    const resistance::Safety& safety =
        metal.kind == MetalKind::aluminum ? resistance::aluminum::yield_safety : steel::shear_safety;
    ShearStrength strength;
    strength.clause = steel_clause(metal, "AISC 360-16 G4, H3.1");
    const auto usable = [&](double nominal) {
        return available(nominal, safety, input.resolved.detail.basis, strength.clause).value;
    };
    const auto nominal_lb = [&](bool along_x) {
        return post.foot.solid ? steel::bar_shear_lb(post.foot.piece, post.used.yield_psi)
                               : steel::tube_shear_lb(post.foot.piece, post.wall_in, along_x, post.used.yield_psi);
    };
    strength.along_x_lb = usable(nominal_lb(true));
    strength.along_y_lb = usable(nominal_lb(false));
    strength.twist_lb_in = usable(twist_nominal_lb_in(post));
    strength.steps = {yield_step(metal, post.used),
                      {"V_cx", phrase("available shear along x"), "0.60 F_y on the walls along it, ASD or LRFD",
                       strength.along_x_lb, "lb", strength.clause},
                      {"V_cy", phrase("available shear along y"), "0.60 F_y on the walls along it, ASD or LRFD",
                       strength.along_y_lb, "lb", strength.clause},
                      {"T_c", phrase("available twist"), "0.60 F_y on the closed wall, ASD or LRFD",
                       strength.twist_lb_in, "lb in", strength.clause}};
    return strength;
}

/// Every share added, which is on the safe side of H3.2.
double share_used(const ShearStrength& strength, const demand::PostCut& cut) {
    return ratio(std::abs(cut.shear_along_lb), strength.along_x_lb) +
           ratio(std::abs(cut.shear_out_lb), strength.along_y_lb) +
           ratio(std::abs(cut.twist_lb_in), strength.twist_lb_in);
}

CheckResult without_strength(const format::Phrase& missing) {
    CheckResult result;
    result.part = {model::PartKind::post};
    lacks_evidence(result, missing);
    return result;
}

}  // namespace

std::vector<CheckResult> metal_post_bending_at_cuts(const CheckInput& input) {
    const MetalPost post = metal_post(input);
    const MetalStrength strength =
        metal_strength({post.foot.piece, post.foot.solid, static_cast<int>(post.foot.centers.size()),
                        input.resolved.post_metal, post.welding, model::lever_height_in(input.resolved.detail)},
                       input.resolved.detail.basis);
    if (!strength.missing.empty()) return {without_strength(strength.missing)};
    const auto moment = [](const demand::PostCut& cut) {
        return std::hypot(cut.bending_out_lb_in, cut.bending_along_lb_in);
    };
    const auto worst = worst_cut(input, [&](const demand::PostCut& cut) {
        return ratio(moment(cut), capacity_lb_in(strength, left_at(input, post, cut.z_in), cut));
    });
    if (!worst) return {};
    const demand::PostCut& cut = cut_of(input, *worst);
    const steel::LeftAtHoles left = left_at(input, post, cut.z_in);
    CheckResult result = cut_result(input, *worst, phrase("post bending"));
    result.clause = strength.clause;
    result.unit = "lb in";
    result.demand = moment(cut);
    result.capacity = capacity_lb_in(strength, left, cut);
    result.steps = strength.steps;
    append(result.steps, cut_steps(cut));
    append(result.steps, hole_steps(strength, left));
    if (cut.down_lb != 0.0)
        append(result.steps, {demanded("P", phrase("vertical load"), std::abs(cut.down_lb), "lb"),
                              {"P_c", phrase("available axial strength, column free at its top"), "K = 2.1",
                               strength.axial_lb, "lb", "AISC 360-16 E3"}});
    result.steps.push_back({"M_c", phrase("available moment in the direction of the push"),
                            "M / (M_x/M_cx + M_y/M_cy), or the plastic moment about that axis where nothing is drilled",
                            result.capacity, "lb in", strength.clause});
    conclude(result);
    return {result};
}

std::vector<CheckResult> metal_post_shear_at_cuts(const CheckInput& input) {
    const MetalPost post = metal_post(input);
    if (!post.used.missing.empty()) return {without_strength(post.used.missing)};
    const ShearStrength strength = shear_strength(input, post);
    const auto worst = worst_cut(input, [&](const demand::PostCut& cut) { return share_used(strength, cut); });
    if (!worst) return {};
    const demand::PostCut& cut = cut_of(input, *worst);
    CheckResult result = cut_result(input, *worst, phrase("post shear"));
    result.clause = strength.clause;
    result.demand = worst->value;
    result.capacity = 1.0;
    result.steps = strength.steps;
    append(result.steps,
           {demanded("V_x", phrase("shear there, along the rail"), std::abs(cut.shear_along_lb), "lb"),
            demanded("V_y", phrase("shear there, outward or inward"), std::abs(cut.shear_out_lb), "lb"),
            demanded("T", phrase("twist there"), std::abs(cut.twist_lb_in), "lb in"),
            {"R", phrase("combined"), "V_x/V_cx + V_y/V_cy + T/T_c", worst->value, "", "common practice"}});
    conclude(result);
    return {result};
}

}  // namespace toehold::checks
