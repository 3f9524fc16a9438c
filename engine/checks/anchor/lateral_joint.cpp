#include "checks/anchor/lateral_joint.h"

#include "catalog/fastened.h"
#include "checks/anchor/seating.h"
#include "checks/basis/shears.h"
#include "resistance/wood/dowel_properties.h"
#include "resistance/wood/withdrawal.h"
#include "resistance/wood/yield_limit.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using catalog::DeckingKind;
using catalog::DeckingMaterial;
using catalog::FastenerKind;
using catalog::Resolved;
using format::phrase;

constexpr double right_angle_rad = 0.5 * std::numbers::pi;

/// Why the layers cannot count as wood around the shank; empty where they can.
format::Phrase cannot_bear(const Resolved& resolved, const Anchor& anchor) {
    const catalog::Fastened fastened = catalog::fastened_by(resolved, anchor);
    for (auto it = fastened.layers.rbegin(); it != fastened.layers.rend(); ++it) {
        const DeckingMaterial& layer = it->material;
        if (it->loose) return phrase("The packing through the boards is taken as a gap.");
        if (layer.kind != DeckingKind::wood)
            return phrase("The layer {} is not wood and is taken as a gap.", layer.name);
        if (layer.species != wood_of(resolved, anchor).species.id)
            return phrase("The layer {} is not of the species of {} and is taken as a gap.", layer.name,
                          member_name(resolved, anchor));
    }
    return {};
}

void set_gap(LateralJoint& joint, const Resolved& resolved, const Anchor& anchor) {
    const double layers_in = catalog::fastened_by(resolved, anchor).layers_in();
    joint.dowel.gap_in = layers_in;
    const bool asked = model::decking_in_shear(resolved.detail.basis) == model::DeckingInShear::bearing;
    if (!asked || layers_in <= 0.0) return;
    joint.gap_note = cannot_bear(resolved, anchor);
    joint.decking_bears = joint.gap_note.empty();
    if (joint.decking_bears) joint.dowel.gap_in = 0.0;
}

double side_bearing_psi(const catalog::SideMember& side) {
    const catalog::Metal& metal = side.metal;
    if (metal.kind == catalog::MetalKind::aluminum) {
        return resistance::aluminum_dowel_bearing_psi(
            std::min(metal.ultimate_psi, metal.welded_ultimate_psi.value_or(metal.ultimate_psi)));
    }
    return resistance::steel_dowel_bearing_psi(metal.ultimate_psi, side.thickness_in);
}

bool penetrates(const Anchor& anchor, const Seating& seated) {
    switch (anchor.kind) {
        case FastenerKind::lag_screw:
            return units::at_least(seated.embedment_in - seated.tip_in_member_in,
                                   resistance::lag_minimum_penetration_in(anchor.diameter_in));
        case FastenerKind::wood_screw:
            return units::at_least(seated.embedment_in,
                                   resistance::wood_screw_minimum_penetration_in(anchor.diameter_in));
        default:
            return true;
    }
}

/// Loose pieces of a stack slip on each other, so only the top one bears.
double main_bearing_in(const model::Member& member, const Seating& seated) {
    const double bearing_in = seated.embedment_in - 0.5 * seated.tip_in_member_in;
    if (member.stack == 1 || member.stack_fastened) return bearing_in;
    return std::min(bearing_in, model::piece_depth_in(member));
}

/// From the member's grain to the anchor's force, 0 to pi/2; across it where there is no force to speak of.
double grain_angle_rad(const LateralJoint& joint, const demand::AnchorForce& force) {
    const bool grain_along_x = joint.grain == model::PlanAxis::x;
    const double along_lb = std::abs(grain_along_x ? force.shear_x_lb : force.shear_y_lb);
    const double across_lb = std::abs(grain_along_x ? force.shear_y_lb : force.shear_x_lb);
    return along_lb + across_lb > 0.0 ? std::atan2(across_lb, along_lb) : right_angle_rad;
}

Adjusted adjust(const Resolved& resolved, const LateralJoint& joint, double reference_lb, double geometry_factor) {
    LateralConditions conditions;
    conditions.diameter_in = joint.nominal_diameter_in;
    conditions.single_row_or_single_fastener = joint.single_row;
    conditions.geometry_factor = geometry_factor;
    conditions.group_factor = joint.group_factor;
    return adjust_lateral(reference_lb, conditions, resolved.detail.basis);
}

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
    return side.metal.kind == catalog::MetalKind::aluminum ? "assumption: NDS App. I read for aluminum"
                                                           : "NDS 2018 Appendix I";
}

}  // namespace

bool covered(const Anchor& anchor) {
    constexpr double thickest_in = 1.0;
    return anchor.diameter_in <= thickest_in;
}

LateralJoint lateral_joint(const Resolved& resolved, std::size_t index) {
    const Anchor& anchor = resolved.anchors.at(index);
    const Seating seated = seating(resolved, anchor);
    LateralJoint joint;
    joint.anchor = index;
    joint.nominal_diameter_in = anchor.diameter_in;
    joint.specific_gravity = wood_of(resolved, anchor).species.specific_gravity;
    joint.grain = member_of(resolved, anchor).along;
    joint.penetrates = penetrates(anchor, seated);
    joint.group_factor = row_factor(resolved, index);
    joint.single_row = single_row_along_grain(resolved, index);
    joint.fixed_factor = adjust(resolved, joint, 1.0, 1.0).value;
    joint.threads = thread_place(resolved, anchor);
    joint.dowel.diameter_in = joint.threads.full_diameter ? anchor.diameter_in : anchor.root_diameter_in;
    joint.dowel.bending_yield_psi = anchor.bending_yield_psi;
    joint.dowel.main_bearing_in = main_bearing_in(member_of(resolved, anchor), seated);
    const catalog::SideMember side = catalog::fastened_by(resolved, anchor).side;
    joint.dowel.side_bearing_in = side.thickness_in;
    joint.dowel.side_bearing_psi = side_bearing_psi(side);
    set_gap(joint, resolved, anchor);
    joint.placement = mates_placement(resolved, index);
    return joint;
}

LateralValue lateral_value(const LateralJoint& joint, const demand::State& state) {
    LateralValue value;
    value.angle_rad = grain_angle_rad(joint, state.anchors.at(joint.anchor));
    const double bearing_angle_rad = joint.decking_bears ? right_angle_rad : value.angle_rad;
    resistance::DowelConnection dowel = joint.dowel;
    dowel.main_bearing_psi =
        resistance::dowel_bearing_psi(joint.specific_gravity, joint.nominal_diameter_in, bearing_angle_rad);
    value.main_bearing_psi = dowel.main_bearing_psi;
    const resistance::ReductionTerms reduction =
        resistance::reduction_terms(joint.nominal_diameter_in, dowel.diameter_in, bearing_angle_rad);
    value.reference = resistance::governing(resistance::single_shear_with_gap(dowel, reduction));
    value.reduction = reduction.of(value.reference.mode);
    if (!joint.penetrates) value.reference.value_lb = 0.0;

    value.geometry_factor = geometry_factor(joint.placement, state);
    value.adjusted_lb = value.reference.value_lb * joint.fixed_factor * value.geometry_factor;
    return value;
}

std::vector<double> adjusted_lateral_lb(const CheckInput& input, const LateralJoint& joint) {
    const auto same = same_shears(input);
    std::vector<double> values;
    values.reserve(same->first.size());
    for (std::size_t index = 0; index < same->first.size(); ++index) {
        const std::size_t first = same->first[index];
        values.push_back(first < index ? values[first] : lateral_value(joint, input.demand.states[index]).adjusted_lb);
    }
    return values;
}

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
        given("l_s", phrase("bearing length in the plate"), dowel.side_bearing_in, "in", "NDS 2018 12.3.5"),
        {"g",
         joint.decking_bears ? phrase("gap; the decking is taken as wood around the shank")
                             : phrase("gap: decking and shims"),
         joint.decking_bears ? "basis" : "given", dowel.gap_in, "in", "AWC TR12", Origin::given, !joint.decking_bears},
        given("G", phrase("specific gravity of {}", member), joint.specific_gravity, "", "NDS 2018 Table 12.3.3A"),
        {"theta", phrase("angle of the force to the grain of {}", member), "from the demand",
         value.angle_rad * 180.0 / std::numbers::pi, "deg", "demand", Origin::demanded},
        {"F_em",
         joint.decking_bears ? phrase("dowel bearing strength of the wood, across the grain")
                             : phrase("dowel bearing strength of {}", member),
         "12.3.3 at the angle", value.main_bearing_psi, "psi", "NDS 2018 12.3.3, 12.3.4"},
        {"F_es", phrase("dowel bearing strength of the plate, {}", side.metal.name), "from F_u", dowel.side_bearing_psi,
         "psi", side_clause(side)},
        given("F_yb", phrase("bending yield strength of the anchor"), dowel.bending_yield_psi, "psi",
              "NDS 2018 Table I1"),
        {"R_d", phrase("reduction term, mode {}", mode), "by diameter and angle", value.reduction, "",
         "NDS 2018 Table 12.3.1B"},
        {"Z", phrase("reference lateral value, mode {} governs", mode),
         joint.penetrates ? "least of the yield modes with the gap" : "0: penetration below the minimum",
         value.reference.value_lb, "lb", "NDS 2018 12.3.1; AWC TR12"}};
    const Adjusted adjusted = adjust(resolved, joint, value.reference.value_lb, value.geometry_factor);
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
