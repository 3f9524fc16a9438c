// Steel angles upright in the corners between a member's sides and its holder's face. How the forces part, each on the
// safe side:
//   - up and down: half to each angle, and a torque as a pair on the two, the member's width apart;
//   - that force passes from one leg's line of fasteners to the other's, a gauge away from the corner in each leg: a
//     couple of force times gauge in the plane of each leg, taken by its own line;
//   - across: the member presses on one angle, whose fasteners in the holder take it all; a single angle may be drawn
//     off the member's side instead, and is checked for both;
//   - drawn away: shear in the member's legs, pull in the holder's, twice the force for the prying of the leg;
//   - a moment in the upright plane: a pull on the outermost fasteners over half the member's depth.
#include "checks/basis/result_parts.h"
#include "checks/connection/connection.h"
#include "checks/connection/side_angle_leg.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;
using model::SideAngles;

/// An angle's leg lifts at the corner and presses at its tip, taken as far beyond the fastener as the corner is before
/// it: the fastener draws twice the force.
constexpr double prying = 2.0;

struct AngleValues {
    double member_leg_lb = 0.0, holder_leg_lb = 0.0;  ///< Z'
    double member_pull_lb = 0.0, holder_pull_lb = 0.0;
    double per_couple = 0.0;   ///< force on the outermost fastener of one leg, 1/in
    double towards_end = 1.0;  ///< of the member leg, as `LegValue` has it
    double width_in = 0.0, depth_in = 0.0;
    format::Phrase why_member, why_holder, why_member_pull, why_holder_pull;
};

double line_in(const SideAngles& angles) { return angles.spacing_in * (angles.per_leg - 1); }

AngleLeg member_leg(const EndPlace& place, const SideAngles& angles) {
    // A bolt goes through both angles: each has half the wood.
    const bool shared = angles.kind == SideAngles::Kind::bolt && angles.sides == 2;
    return {phrase("member leg"),
            "m",
            place.wood->species.specific_gravity,
            place.wood->grade.modulus_psi,
            shared ? 0.5 * place.member.width_in : place.member.width_in,
            0.5 * (place.member.depth_in - line_in(angles)),
            angles.gauge_in};
}

/// Tops flush: the line is at the member's mid-depth.
AngleLeg holder_leg(const EndPlace& place, const SideAngles& angles) {
    const double top_in = 0.5 * (place.member.depth_in - line_in(angles));
    const double bottom_in = place.holder.depth_in - 0.5 * (place.member.depth_in + line_in(angles));
    return {phrase("support leg"),
            "h",
            place.holder.specific_gravity,
            place.holder.modulus_psi,
            place.holder.width_in,
            std::min(top_in, bottom_in),
            0.0};
}

/// Of one fastener, in the plane of its leg.
struct InPlane {
    double upright_lb = 0.0, couple_lb_in = 0.0, level_lb = 0.0;
};

double level_lb(const InPlane& force, double per_couple) { return force.couple_lb_in * per_couple + force.level_lb; }

/// Its part along the grain counts `towards_end` times.
double outermost_lb(const InPlane& force, const SideAngles& angles, double per_couple, double towards_end = 1.0) {
    return std::hypot(force.upright_lb / angles.per_leg, level_lb(force, per_couple) * towards_end);
}

/// On the outermost fastener of a member leg, where a force along the grain may find the end too near.
void add_member_use(Uses& uses, const InPlane& force, const SideAngles& angles, const AngleValues& values) {
    const bool along = level_lb(force, values.per_couple) > no_force_lb;
    const bool too_near = along && std::isinf(values.towards_end);
    const auto words = [&] {
        return UseWords{
            "P_m", phrase("force across the outermost fastener, member leg"),
            "sqrt((V/n)^2 + (e_m ((V g + M/s) r_max/sum(r^2) + P_a/(s n)))^2), V = R_v/s + T/b",
            too_near ? phrase("End distance {} is below the minimum for force along the grain towards the end, 3.5 D, "
                              "member leg. Use a larger gauge or thinner fasteners.",
                              Dimension{angles.gauge_in})
                     : values.why_member};
    };
    const double towards_end = along && !too_near ? values.towards_end : 1.0;
    uses.add(UseGroup::shear, outermost_lb(force, angles, values.per_couple, towards_end),
             too_near ? 0.0 : values.member_leg_lb, words);
}

/// What a single angle cannot spread over two sides.
void add_single_angle_uses(Uses& uses, double across_lb, double torque_lb_in, const AngleValues& values) {
    uses.add(UseGroup::withdrawal, prying * across_lb, values.member_pull_lb, [&values] {
        return UseWords{"N_m", phrase("tension on a fastener, member leg"), "2 R_h/n, doubled for prying",
                        values.why_member_pull};
    });
    uses.add_unresisted_couple(UseGroup::lateral, std::abs(torque_lb_in), [] {
        return UseWords{
            "T", phrase("torque about the member's axis"), "",
            phrase("An angle on one side does not resist torque about the member's axis. Use one on each side.")};
    });
}

void add_uses(Uses& uses, const demand::SupportReaction& forces, const SideAngles& angles, const AngleValues& values) {
    const double sides = angles.sides, n = angles.per_leg;
    const double pair_lb = angles.sides > 1 ? std::abs(forces.torque_lb_in) / values.width_in : 0.0;
    const double one_angle_lb = upright_lb(forces) / sides + pair_lb;
    const double drawn_lb = std::max(forces.along_lb, 0.0) / (sides * n);
    const double turning = std::abs(forces.moment_lb_in) / sides;
    const double across_lb = std::abs(forces.across_lb) / n;
    const double eccentric = one_angle_lb * angles.gauge_in;
    const double holder_lb = outermost_lb({one_angle_lb, eccentric, across_lb}, angles, values.per_couple);
    const double pull_lb = prying * (drawn_lb + turning / (0.5 * values.depth_in));
    add_member_use(uses, {one_angle_lb, eccentric + turning, drawn_lb}, angles, values);
    uses.add(UseGroup::shear, holder_lb, values.holder_leg_lb, [&values] {
        return UseWords{"P_h", phrase("force across the outermost fastener, support leg"),
                        "sqrt((V/n)^2 + (V g r_max/sum(r^2) + R_h/n)^2)", values.why_holder};
    });
    uses.add(UseGroup::withdrawal, pull_lb, values.holder_pull_lb, [&values] {
        return UseWords{"N_h", phrase("tension on a fastener, support leg"),
                        "2 (P_a/(s n) + M/(s d/2)), doubled for prying", values.why_holder_pull};
    });
    if (angles.sides == 1) add_single_angle_uses(uses, across_lb, forces.torque_lb_in, values);
    if (values.per_couple > 0.0) return;
    uses.add_unresisted_couple(UseGroup::lateral, eccentric + turning, [] {
        return UseWords{"M_e", phrase("couple in the plane of a leg, force times gauge"), "V g + M/s",
                        phrase("One fastener a leg does not resist the couple of force times gauge. Use two or more.")};
    });
}

format::Phrase name_of(const SideAngles& angles) {
    const Dimension diameter{angles.diameter_in};
    const int fasteners = angles.per_leg;
    switch (angles.kind) {
        case SideAngles::Kind::bolt:
            return angles.sides == 2 ? phrase("2 steel angles, {} bolts {} a leg", fasteners, diameter)
                                     : phrase("1 steel angle, {} bolts {} a leg", fasteners, diameter);
        case SideAngles::Kind::lag_screw:
            return angles.sides == 2 ? phrase("2 steel angles, {} lag screws {} a leg", fasteners, diameter)
                                     : phrase("1 steel angle, {} lag screws {} a leg", fasteners, diameter);
        case SideAngles::Kind::wood_screw:
            break;
    }
    return angles.sides == 2 ? phrase("2 steel angles, {} wood screws {} a leg", fasteners, diameter)
                             : phrase("1 steel angle, {} wood screws {} a leg", fasteners, diameter);
}

/// What the strength cannot be found without; empty: nothing.
format::Phrase missing_for(const EndPlace& place, const SideAngles& angles, bool metal_known) {
    constexpr double thinnest_in = 0.125;
    if (place.on_beam)
        return phrase(
            "Angles between a joist and the beam it bears on are not covered. Give them as hardware with values "
            "from a report.");
    if (!units::at_least(angles.thickness_in, thinnest_in))
        return phrase(
            "The angle is {} thick. Below {} its steel may bend first and is not computed: use a thicker angle, "
            "or give it as hardware with values from a report.",
            Dimension{angles.thickness_in}, Dimension{thinnest_in});
    if (!metal_known) return phrase("The metal of the angles is not specified. Give it.");
    return {};
}

}  // namespace

EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place, const SideAngles& angles) {
    EndStrength strength;
    strength.by = name_of(angles);
    strength.clause = "NDS 2018 12.2, 12.3, 12.5.1";
    const auto metal = resolved.angle_metals.find(angles.metal);
    strength.missing = missing_for(place, angles, metal != resolved.angle_metals.end());
    if (!strength.missing.empty()) return strength;

    const model::Basis& basis = resolved.detail.basis;
    const AngleLeg member = member_leg(place, angles), holder = holder_leg(place, angles);
    const LegValue member_z = leg_lateral(angles, metal->second, member, basis);
    const LegValue holder_z = leg_lateral(angles, metal->second, holder, basis);
    const LegValue member_w = leg_withdrawal(angles, member, basis);
    const LegValue holder_w = leg_withdrawal(angles, holder, basis);
    const AngleValues values{member_z.value_lb,
                             holder_z.value_lb,
                             member_w.value_lb,
                             holder_w.value_lb,
                             outermost_per_couple(angles.per_leg, line_in(angles)),
                             member_z.towards_end,
                             place.member.width_in,
                             place.member.depth_in,
                             member_z.why,
                             holder_z.why,
                             member_w.why,
                             holder_w.why};
    for (const LegValue* value : {&member_z, &holder_z, &holder_w}) append(strength.steps, value->steps);
    strength.note =
        sentences(phrase("Fasteners only: the steel of the angles is not computed."), place.holder.assumption);
    strength.uses = [angles, values](const demand::SupportReaction& forces, Uses& uses) {
        add_uses(uses, forces, angles, values);
    };
    return strength;
}

}  // namespace toehold::checks
