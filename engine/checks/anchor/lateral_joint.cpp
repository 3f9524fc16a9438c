#include "checks/anchor/lateral_joint.h"

#include "catalog/anchor_view.h"
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
        if (it->loose)
            return catalog::lies_level(anchor) ? phrase("The member the anchor crosses is taken as a gap.")
                                               : phrase("The packing through the boards is taken as a gap.");
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

/// Of a side member of metal, by the thickness that bears.
double metal_bearing_psi(const catalog::SideMember& side) {
    const catalog::Metal& metal = side.metal;
    if (metal.kind == catalog::MetalKind::aluminum) {
        return resistance::aluminum_dowel_bearing_psi(
            std::min(metal.ultimate_psi, metal.welded_ultimate_psi.value_or(metal.ultimate_psi)));
    }
    return resistance::steel_dowel_bearing_psi(metal.ultimate_psi, side.bears_in);
}

bool penetrates(const Anchor& anchor, const Seating& seated) {
    if (anchor.crossed) return true;  // it goes on into the member behind
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

double angle_rad(double along_lb, double across_lb) {
    const double along = std::abs(along_lb), across = std::abs(across_lb);
    return along + across > 0.0 ? std::atan2(across, along) : right_angle_rad;
}

/// From the member's grain to the anchor's force, 0 to pi/2; across it where there is no force to speak of.
double grain_angle_rad(const LateralJoint& joint, const demand::AnchorForce& force) {
    if (joint.grain == model::PlanAxis::y) return angle_rad(force.shear_y_lb, force.shear_x_lb);
    const double slope = joint.grain_slope_rad;
    if (slope == 0.0) return angle_rad(force.shear_x_lb, force.shear_y_lb);
    return angle_rad(force.shear_x_lb * std::cos(slope) + force.shear_y_lb * std::sin(slope),
                     force.shear_y_lb * std::cos(slope) - force.shear_x_lb * std::sin(slope));
}

/// What a wood post adds to the joint.
void set_side(LateralJoint& joint, const Resolved& resolved, std::size_t index) {
    const catalog::SideMember side = catalog::fastened_by(resolved, resolved.anchors[index]).side;
    joint.dowel.side_bearing_in = side.bears_in;
    if (!side.wood) {
        joint.dowel.side_bearing_psi = metal_bearing_psi(side);
        return;
    }
    joint.side_specific_gravity = side.wood->species.specific_gravity;
    joint.in_post = post_placement(resolved, index);
    // Up the post's grain all of them must stand on one line too.
    const double line_in = resolved.anchors[index].at.x_in;
    joint.single_row =
        joint.single_row && std::all_of(resolved.anchors.begin(), resolved.anchors.end(), [&](const Anchor& other) {
            return std::abs(other.at.x_in - line_in) <= joint.nominal_diameter_in;
        });
}

/// Fe of both sides and the angle that Rd takes; `member_angle_rad` from the member's grain.
double set_bearing(resistance::DowelConnection& dowel, const LateralJoint& joint, double member_angle_rad,
                   const demand::AnchorForce& force) {
    const double main_angle_rad = joint.decking_bears ? right_angle_rad : member_angle_rad;
    dowel.main_bearing_psi =
        resistance::dowel_bearing_psi(joint.specific_gravity, joint.nominal_diameter_in, main_angle_rad);
    if (!joint.side_specific_gravity) return main_angle_rad;
    const double side_angle_rad = angle_rad(force.shear_y_lb, force.shear_x_lb);
    dowel.side_bearing_psi =
        resistance::dowel_bearing_psi(*joint.side_specific_gravity, joint.nominal_diameter_in, side_angle_rad);
    return std::max(main_angle_rad, side_angle_rad);
}

}  // namespace

Adjusted adjusted_lateral(const Resolved& resolved, const LateralJoint& joint, double reference_lb,
                          double geometry_factor) {
    LateralConditions conditions;
    conditions.diameter_in = joint.nominal_diameter_in;
    conditions.single_row_or_single_fastener = joint.single_row;
    conditions.geometry_factor = geometry_factor;
    conditions.group_factor = joint.group_factor;
    return adjust_lateral(reference_lb, conditions, resolved.detail.basis);
}

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
    joint.grain_slope_rad = grain_slope_rad(resolved, anchor);
    set_side(joint, resolved, index);
    joint.fixed_factor = adjusted_lateral(resolved, joint, 1.0, 1.0).value;
    joint.threads = thread_place(resolved, anchor);
    joint.dowel.diameter_in = joint.threads.full_diameter ? anchor.diameter_in : anchor.root_diameter_in;
    joint.dowel.bending_yield_psi = anchor.bending_yield_psi;
    joint.dowel.main_bearing_in = main_bearing_in(member_of(resolved, anchor), seated);
    set_gap(joint, resolved, anchor);
    joint.placement = mates_placement(resolved, index);
    return joint;
}

LateralValue lateral_value(const LateralJoint& joint, const demand::State& state) {
    LateralValue value;
    value.angle_rad = grain_angle_rad(joint, state.anchors.at(joint.anchor));
    resistance::DowelConnection dowel = joint.dowel;
    const double bearing_angle_rad = set_bearing(dowel, joint, value.angle_rad, state.anchors.at(joint.anchor));
    value.main_bearing_psi = dowel.main_bearing_psi;
    value.side_bearing_psi = dowel.side_bearing_psi;
    const resistance::ReductionTerms reduction =
        resistance::reduction_terms(joint.nominal_diameter_in, dowel.diameter_in, bearing_angle_rad);
    value.reference = resistance::governing(resistance::single_shear_with_gap(dowel, reduction));
    value.reduction = reduction.of(value.reference.mode);
    if (!joint.penetrates) value.reference.value_lb = 0.0;

    value.geometry_factor = geometry_factor(joint.placement, state);
    if (joint.in_post) value.geometry_factor = std::min(value.geometry_factor, geometry_factor(*joint.in_post, state));
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

}  // namespace toehold::checks
