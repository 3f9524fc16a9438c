// The worked lines of a dowel joint around one anchor.
#include "catalog/anchor_view.h"
#include "catalog/fastened.h"
#include "checks/anchor/lateral_joint.h"
#include "checks/anchor/seating.h"

#include <numbers>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using catalog::Resolved;
using format::phrase;

Step diameter_step(const LateralJoint& joint) {
    if (joint.threads.reason.empty())
        return given("D_r", phrase("root diameter, threads taken in the shear plane"), joint.dowel.diameter_in, "in",
                     "NDS 2018 12.3.7");
    if (joint.threads.full_diameter)
        return given("D_y", phrase("diameter in the yield equations: full, {}", joint.threads.reason),
                     joint.dowel.diameter_in, "in", "NDS 2018 12.3.7.2");
    return given("D_r", phrase("diameter in the yield equations: root, {}", joint.threads.reason),
                 joint.dowel.diameter_in, "in", "NDS 2018 12.3.7");
}

const char* side_clause(const catalog::SideMember& side) {
    if (side.wood) return "NDS 2018 12.3.3, 12.3.4";
    return side.metal.kind == catalog::MetalKind::aluminum ? "assumption: NDS App. I read for aluminum"
                                                           : "NDS 2018 Appendix I";
}

format::Phrase side_length_words(const Anchor& anchor, const catalog::SideMember& side) {
    if (side.wood) return phrase("bearing length in the post");
    if (side.bears_in < side.thickness_in) return phrase("bearing length in the post's wall next to the member");
    return catalog::lies_level(anchor) ? phrase("bearing length in the metal") : phrase("bearing length in the plate");
}

Step gap_step(const LateralJoint& joint, const Anchor& anchor) {
    const format::Phrase none = catalog::lies_level(anchor) ? phrase("gap: what lies between post and member")
                                                            : phrase("gap: decking and shims");
    return {"g",
            joint.decking_bears ? phrase("gap; the decking is taken as wood around the shank") : none,
            joint.decking_bears ? "basis" : "given",
            joint.dowel.gap_in,
            "in",
            "AWC TR12",
            Origin::given,
            !joint.decking_bears};
}

Step side_strength_step(const Anchor& anchor, const catalog::SideMember& side, const LateralValue& value) {
    if (side.wood)
        return {"F_es",
                phrase("dowel bearing strength of the post, its grain upright"),
                "12.3.3 at the angle",
                value.side_bearing_psi,
                "psi",
                side_clause(side)};
    return {"F_es",
            catalog::lies_level(anchor) ? phrase("dowel bearing strength of {}", side.metal.name)
                                        : phrase("dowel bearing strength of the plate, {}", side.metal.name),
            "from F_u",
            value.side_bearing_psi,
            "psi",
            side_clause(side)};
}

}  // namespace

std::vector<Step> lateral_steps(const Resolved& resolved, const LateralJoint& joint, const LateralValue& value) {
    const resistance::DowelConnection& dowel = joint.dowel;
    const Anchor& anchor = resolved.anchors.at(joint.anchor);
    const format::Phrase member = member_name(resolved, anchor);
    const catalog::SideMember side = catalog::fastened_by(resolved, anchor).side;
    const std::string mode = resistance::name(value.reference.mode);
    std::vector<Step> steps{
        from_file("D", phrase("nominal diameter"), joint.nominal_diameter_in, "in"),
        diameter_step(joint),
        {"l_m", phrase("bearing length in {}", member), "embedment less half the tip", dowel.main_bearing_in, "in",
         "NDS 2018 12.3.5"},
        given("l_s", side_length_words(anchor, side), dowel.side_bearing_in, "in", "NDS 2018 12.3.5"),
        gap_step(joint, anchor),
        given("G", phrase("specific gravity of {}", member), joint.specific_gravity, "", "NDS 2018 Table 12.3.3A"),
        {"theta", phrase("angle of the force to the grain of {}", member), "from the demand",
         value.angle_rad * 180.0 / std::numbers::pi, "deg", "demand", Origin::demanded},
        {"F_em",
         joint.decking_bears ? phrase("dowel bearing strength of the wood, across the grain")
                             : phrase("dowel bearing strength of {}", member),
         "12.3.3 at the angle", value.main_bearing_psi, "psi", "NDS 2018 12.3.3, 12.3.4"},
        side_strength_step(anchor, side, value),
        given("F_yb", phrase("bending yield strength of the anchor"), dowel.bending_yield_psi, "psi",
              "NDS 2018 Table I1"),
        {"R_d", phrase("reduction term, mode {}", mode), "by diameter and angle", value.reduction, "",
         "NDS 2018 Table 12.3.1B"},
        {"Z", phrase("reference lateral value, mode {} governs", mode),
         joint.penetrates ? "least of the yield modes with the gap" : "0: penetration below the minimum",
         value.reference.value_lb, "lb", "NDS 2018 12.3.1; AWC TR12"}};
    const Adjusted adjusted = adjusted_lateral(resolved, joint, value.reference.value_lb, value.geometry_factor);
    steps.insert(steps.end(), adjusted.steps.begin(), adjusted.steps.end());
    steps.push_back({"Z'", phrase("adjusted lateral value"), "Z and every factor", value.adjusted_lb, "lb",
                     "NDS 2018 Table 11.3.1"});
    return steps;
}

format::Phrase lateral_note(const LateralJoint& joint, const LateralValue& value) {
    if (!joint.penetrates)
        return phrase("No lateral value: the penetration is below the minimum of the standard. Use a longer screw.");
    if (value.reference.value_lb > 0.0 && value.adjusted_lb <= 0.0)
        return phrase(
            "No lateral value: an end distance or a spacing is below the minimum of the standard. Move the "
            "anchors.");
    return joint.gap_note;
}

}  // namespace toehold::checks
