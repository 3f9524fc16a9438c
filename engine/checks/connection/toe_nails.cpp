// Toe-nails at a member's end: NDS 2018 12.5.4 on lateral and withdrawal values, nails under 1/4 in. They go through
// the member's sides into the holder's face, or, where a joist lies on a beam, into the beam below it: there it is
// uplift that draws them.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/connection/connection.h"
#include "resistance/wood/single_shear.h"
#include "resistance/wood/withdrawal.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;
using model::ToeNails;

struct NailValues {
    double lateral_lb = 0.0, withdrawal_lb = 0.0;  ///< adjusted, one nail
    double inside_in = 0.0;  ///< from the member's side to where a nail crosses the support's face
    format::Phrase why;
    std::vector<Step> steps;
};

resistance::SingleShear reference_lateral(const EndPlace& place, const ToeNails& nails) {
    const resistance::ToeNailPlace at = resistance::toe_nail_place(nails.length_in);
    resistance::WoodToWood connection;
    connection.diameter_in = nails.diameter_in;
    connection.length_in = at.side_in + at.penetration_in;
    connection.side_thickness_in = at.side_in;
    connection.main_thickness_in = place.on_beam ? 0.0 : place.holder.width_in;
    connection.side_specific_gravity = place.wood->species.specific_gravity;
    connection.main_specific_gravity = place.holder.specific_gravity;
    connection.side_angle_rad = connection.main_angle_rad = 0.5 * std::numbers::pi;
    return resistance::single_shear_value(connection);
}

void add_lateral(NailValues& values, const ToeNails& nails, const resistance::SingleShear& reference,
                 const model::Basis& basis) {
    LateralConditions conditions;
    conditions.diameter_in = nails.diameter_in;
    conditions.single_row_or_single_fastener = nails.count == 1;
    const Adjusted adjusted = adjust_lateral(resistance::toe_nail_lateral() * reference.value_lb, conditions, basis);
    values.lateral_lb = adjusted.value;
    append(values.steps,
           {{"Z", phrase("reference lateral value, one nail, mode {} governs", resistance::name(reference.mode)),
             "least of the yield modes", reference.value_lb, "lb", "NDS 2018 12.3.1"},
            {"C_tn", phrase("toe-nail factor, lateral"), "", resistance::toe_nail_lateral(), "", "NDS 2018 12.5.4.2"}});
    append(values.steps, adjusted.steps);
    values.steps.push_back({"Z'", phrase("adjusted lateral value"), "Z times every factor", adjusted.value, "lb",
                            "NDS 2018 Table 11.3.1"});
}

/// The standard lifts the wet service factor for toe-nails in withdrawal (12.5.4.1, from memory); it is kept, as for
/// screws, which is on the safe side.
void add_withdrawal(NailValues& values, const EndPlace& place, const ToeNails& nails, double penetration_in,
                    const model::Basis& basis) {
    const double per_in = resistance::nail_withdrawal_lb_per_in(place.holder.specific_gravity, nails.diameter_in);
    const Adjusted adjusted = adjust_withdrawal(resistance::toe_nail_withdrawal() * per_in * penetration_in, basis);
    values.withdrawal_lb = adjusted.value;
    append(values.steps,
           {{"W", phrase("reference withdrawal value"), "1380 G^2.5 D", per_in, "lb/in", "NDS 2018 Eq. 12.2-3"},
            {"C_tn", phrase("toe-nail factor, withdrawal"), "", resistance::toe_nail_withdrawal(), "",
             "NDS 2018 12.5.4.1"}});
    append(values.steps, adjusted.steps);
    values.steps.push_back({"W'", phrase("adjusted withdrawal value, one nail"), "W p times every factor",
                            adjusted.value, "lb", "NDS 2018 Table 11.3.1"});
}

NailValues nail_values(const catalog::Resolved& resolved, const EndPlace& place, const ToeNails& nails) {
    const resistance::ToeNailPlace at = resistance::toe_nail_place(nails.length_in);
    const resistance::SingleShear reference = reference_lateral(place, nails);
    NailValues values;
    values.inside_in = at.inside_in;
    values.steps = {from_file("D", phrase("nail diameter"), nails.diameter_in, "in"),
                    {"l_s", phrase("bearing length in the member"), "L/3", at.side_in, "in", "NDS 2018 Figure 12A"},
                    {"p", phrase("penetration into the support"), "L cos 30 - L/3, at most the width of the support",
                     reference.penetration_in, "in", "NDS 2018 Figure 12A"}};
    add_lateral(values, nails, reference, resolved.detail.basis);
    if (!(reference.value_lb > 0.0)) {
        values.why = phrase("Penetration {} of the toe-nails is below the minimum of {} (6 D). Use longer nails.",
                            Dimension{reference.penetration_in}, Dimension{reference.minimum_penetration_in});
        return values;
    }
    add_withdrawal(values, place, nails, reference.penetration_in, resolved.detail.basis);
    return values;
}

/// Force across the outermost nail for each lb in of torque, 1/in: nails cross the holder's face on two upright lines.
double outermost_per_torque(const EndPlace& place, const ToeNails& nails, double inside_in) {
    const int a_side = nails.count / 2;
    if (a_side < 1) return 0.0;
    const double half_in = std::abs(0.5 * place.member.width_in - inside_in);
    const double n = a_side;
    const double line_in2 = a_side > 1 ? nails.spread_in * nails.spread_in * n * (n + 1.0) / (12.0 * (n - 1.0)) : 0.0;
    const double sum_in2 = 2.0 * (n * half_in * half_in + line_in2);
    const double farthest_in = std::hypot(half_in, a_side > 1 ? 0.5 * nails.spread_in : 0.0);
    constexpr double least_lever_in = 0.25;  // closer together than this they are taken as one line
    return farthest_in > least_lever_in ? farthest_in / sum_in2 : 0.0;
}

void add_torque_unresisted(Uses& uses, double torque_lb_in) {
    uses.add_unresisted_couple(UseGroup::lateral, std::abs(torque_lb_in), [] {
        return UseWords{
            "T", phrase("torque about the member's axis"), "",
            phrase("These toe-nails are too close together to resist torque about the member's axis. Use two "
                   "or more on each side, spread over the depth, or hardware on both sides.")};
    });
}

void add_moment_unresisted(Uses& uses, double moment_lb_in) {
    uses.add_unresisted_couple(UseGroup::withdrawal, std::abs(moment_lb_in), [] {
        return UseWords{
            "M", phrase("moment in the member's vertical plane"), "",
            phrase("Toe-nails are not counted on for moment. Add hardware with a tension value and a height.")};
    });
}

void add_uses_at_face(Uses& uses, const demand::SupportReaction& forces, const ToeNails& nails,
                      const NailValues& values, double per_torque) {
    const double across_lb =
        std::hypot(upright_lb(forces), forces.across_lb) / nails.count + std::abs(forces.torque_lb_in) * per_torque;
    uses.add(UseGroup::shear, across_lb, values.lateral_lb, [&values] {
        return UseWords{"P", phrase("force across the outermost nail"), "sqrt(R_v^2 + R_h^2)/n + T r_max/sum(r^2)",
                        values.why};
    });
    uses.add(UseGroup::withdrawal, std::max(forces.along_lb, 0.0) / nails.count, values.withdrawal_lb, [&values] {
        return UseWords{"N", phrase("withdrawal force on each nail"), "P_a/n", values.why};
    });
    add_moment_unresisted(uses, forces.moment_lb_in);
    if (!(per_torque > 0.0)) add_torque_unresisted(uses, forces.torque_lb_in);
}

/// Rolling on the beam, the joist is pressed on one lower edge and draws the nails of the other side, half its width
/// away at least.
void add_uses_on_beam(Uses& uses, const demand::SupportReaction& forces, const ToeNails& nails,
                      const NailValues& values, double half_width_in) {
    const int a_side = nails.count / 2;
    const double rolling_lb = a_side > 0 ? std::abs(forces.torque_lb_in) / (half_width_in * a_side) : 0.0;
    uses.add(UseGroup::shear, std::hypot(forces.across_lb, forces.along_lb) / nails.count, values.lateral_lb,
             [&values] {
                 return UseWords{"P", phrase("force across each nail"), "sqrt(R_h^2 + P_a^2)/n", values.why};
             });
    uses.add(
        UseGroup::withdrawal, std::max(forces.up_lb, 0.0) / nails.count + rolling_lb, values.withdrawal_lb, [&values] {
            return UseWords{"N", phrase("withdrawal force on the most loaded nail"), "R_v/n + T/(b/2 n/2)", values.why};
        });
    add_moment_unresisted(uses, forces.moment_lb_in);
    if (a_side < 1) add_torque_unresisted(uses, forces.torque_lb_in);
}

}  // namespace

EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place, const ToeNails& nails) {
    EndStrength strength;
    strength.by = phrase("{} toe-nails {} x {}", nails.count, Dimension{nails.diameter_in}, Dimension{nails.length_in});
    strength.clause = "NDS 2018 12.2.3, 12.3, 12.5.4";
    constexpr double thickest_in = 0.25;
    if (nails.diameter_in >= thickest_in) {
        strength.missing =
            phrase("Toe-nails of {} and more are not covered. Use smaller nails, or hardware with a report.",
                   Dimension{thickest_in});
        return strength;
    }
    NailValues values = nail_values(resolved, place, nails);
    if (!place.on_beam && nails.spread_in > place.member.depth_in) {
        values.lateral_lb = values.withdrawal_lb = 0.0;
        values.why = phrase(
            "The spread of the toe-nails, {}, exceeds the member's depth, {}: some miss it. Reduce the "
            "spread.",
            Dimension{nails.spread_in}, Dimension{place.member.depth_in});
    }
    strength.steps = std::move(values.steps);
    strength.note = place.holder.assumption;
    if (place.on_beam) {
        strength.uses = [nails, values, half_in = 0.5 * place.member.width_in](const demand::SupportReaction& forces,
                                                                               Uses& uses) {
            add_uses_on_beam(uses, forces, nails, values, half_in);
        };
    } else {
        strength.uses = [nails, values, per_torque = outermost_per_torque(place, nails, values.inside_in)](
                            const demand::SupportReaction& forces, Uses& uses) {
            add_uses_at_face(uses, forces, nails, values, per_torque);
        };
    }
    return strength;
}

}  // namespace toehold::checks
