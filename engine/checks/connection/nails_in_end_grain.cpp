// Nails or wood screws through the holder into the member's end grain, loaded across their axis by vertical and
// horizontal force and torque. Withdrawal from end grain is not permitted (NDS 2018 12.2.2.3, 12.2.3.3)
// and is never counted.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/connection/connection.h"
#include "checks/connection/structural_screws.h"
#include "resistance/wood/connection_factors.h"
#include "resistance/wood/single_shear.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;
using model::EndGrainFasteners;

/// From here up NDS 2018 12.5.1 sets distances and 11.3.6 a group factor.
constexpr double least_thick_in = 0.25;

bool are_screws(const EndGrainFasteners& fasteners) { return fasteners.kind == EndGrainFasteners::Kind::wood_screw; }

/// Thread root over outside diameter of cut-thread wood screws: the least of NDS 2018 Table L3.
double root_diameter_in(const EndGrainFasteners& fasteners) {
    constexpr double least_root_ratio = 0.78;
    return are_screws(fasteners) ? least_root_ratio * fasteners.diameter_in : 0.0;
}

resistance::SingleShear reference_value(const EndPlace& place, const EndGrainFasteners& fasteners) {
    resistance::WoodToWood connection;
    connection.diameter_in = fasteners.diameter_in;
    connection.root_diameter_in = root_diameter_in(fasteners);
    connection.length_in = fasteners.length_in;
    connection.side_thickness_in = place.holder.width_in;
    connection.side_specific_gravity = place.holder.specific_gravity;
    connection.main_specific_gravity = place.wood->species.specific_gravity;
    connection.side_angle_rad = 0.5 * std::numbers::pi;  // the weaker direction in the holder, whatever the force's
    connection.main_end_grain = true;
    return resistance::single_shear_value(connection);
}

/// Z', and why there is none.
struct Lateral {
    double value_lb = 0.0;
    format::Phrase why;
    std::vector<Step> steps;
};

Lateral lateral(const catalog::Resolved& resolved, const EndPlace& place, const EndGrainFasteners& fasteners) {
    const resistance::SingleShear reference = reference_value(place, fasteners);
    LateralConditions conditions;
    conditions.diameter_in = fasteners.diameter_in;
    conditions.single_row_or_single_fastener = fasteners.count == 1;
    conditions.end_grain_factor = resistance::lateral_end_grain();
    const Adjusted adjusted = adjust_lateral(reference.value_lb, conditions, resolved.detail.basis);
    Lateral lateral{
        adjusted.value,
        {},
        {from_file("D",
                   are_screws(fasteners) ? phrase("screw diameter, root taken as 0.78 D") : phrase("nail diameter"),
                   fasteners.diameter_in, "in"),
         {"p", phrase("penetration into the member, tip included"), "length less the width of the support",
          reference.penetration_in, "in", ""},
         {"Z", phrase("reference lateral value, one fastener, mode {} governs", resistance::name(reference.mode)),
          "least of the yield modes", reference.value_lb, "lb", "NDS 2018 12.3.1"}}};
    append(lateral.steps, adjusted.steps);
    lateral.steps.push_back({"Z'", phrase("adjusted lateral value"), "Z times every factor", adjusted.value, "lb",
                             "NDS 2018 Table 11.3.1"});
    if (fasteners.spread_in > place.member.depth_in) {
        lateral.value_lb = 0.0;
        lateral.why = phrase(
            "The spread of the fasteners, {}, exceeds the member's depth, {}: some miss it. Reduce the "
            "spread.",
            Dimension{fasteners.spread_in}, Dimension{place.member.depth_in});
    } else if (!(reference.value_lb > 0.0)) {
        lateral.why = phrase("Penetration {} is below the minimum of {} (6 D). Use longer fasteners.",
                             Dimension{reference.penetration_in}, Dimension{reference.minimum_penetration_in});
    }
    return lateral;
}

void add_uses(Uses& uses, const demand::SupportReaction& forces, const EndGrainFasteners& fasteners,
              const Lateral& lateral) {
    const double per_couple = outermost_per_couple(fasteners.count, fasteners.spread_in);
    // The torque's part is added whatever the directions, so the result holds for a line of any slope.
    const double outermost_lb =
        std::hypot(upright_lb(forces), forces.across_lb) / fasteners.count + std::abs(forces.torque_lb_in) * per_couple;
    uses.add(UseGroup::shear, outermost_lb, lateral.value_lb, [&lateral] {
        return UseWords{"P", phrase("force across the outermost fastener"), "sqrt(R_v^2 + R_h^2)/n + T r_max/sum(r^2)",
                        lateral.why};
    });
    uses.add(UseGroup::withdrawal, std::max(forces.along_lb, 0.0), 0.0, [] {
        return UseWords{
            "P_a", phrase("withdrawal force on the end"), "",
            phrase(
                "Fasteners in end grain have no withdrawal value. Add hardware with a withdrawal or tension value.")};
    });
    uses.add_unresisted_couple(UseGroup::withdrawal, std::abs(forces.moment_lb_in), [] {
        return UseWords{
            "M", phrase("moment in the member's vertical plane"), "",
            phrase("Fasteners in end grain do not resist moment. Add hardware with a tension value and a height.")};
    });
    if (per_couple > 0.0) return;
    uses.add_unresisted_couple(UseGroup::lateral, std::abs(forces.torque_lb_in), [] {
        return UseWords{
            "T", phrase("torque about the member's axis"), "",
            phrase("One fastener does not resist torque about the member's axis. Use two or more, spread over the "
                   "depth.")};
    });
}

EndStrength no_use_on_a_beam(EndStrength strength, const catalog::Resolved& resolved, const EndPlace& place) {
    strength.uses = [nothing = strength_of(resolved, place, std::monostate{})](const demand::SupportReaction& forces,
                                                                               Uses& uses) {
        nothing.uses(forces, uses);
        uses.explain(
            phrase("A joist that bears on a beam has no end grain against it. Specify toe-nails or hardware."));
    };
    return strength;
}

}  // namespace

EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place, const EndGrainFasteners& fasteners) {
    EndStrength strength;
    if (fasteners.kind == EndGrainFasteners::Kind::structural_screw) {
        strength = structural_screw_strength(resolved, place, fasteners);
        return place.on_beam ? no_use_on_a_beam(std::move(strength), resolved, place) : strength;
    }
    strength.by = are_screws(fasteners) ? phrase("{} wood screws {} x {}, into end grain", fasteners.count,
                                                 Dimension{fasteners.diameter_in}, Dimension{fasteners.length_in})
                                        : phrase("{} nails {} x {}, into end grain", fasteners.count,
                                                 Dimension{fasteners.diameter_in}, Dimension{fasteners.length_in});
    strength.clause = "NDS 2018 12.3, 12.5.2";
    if (place.on_beam) return no_use_on_a_beam(std::move(strength), resolved, place);
    if (fasteners.diameter_in >= least_thick_in) {
        strength.missing = phrase(
            "Fasteners of {} and more in end grain have no value in the standard. Use smaller nails or screws, "
            "<structural-screws> with the values of their report, or hardware with a report.",
            Dimension{least_thick_in});
        return strength;
    }
    Lateral value = lateral(resolved, place, fasteners);
    strength.steps = std::move(value.steps);
    strength.note = sentences(phrase("Lateral load only: fasteners in end grain have no withdrawal value."),
                              place.holder.assumption);
    strength.uses = [fasteners, value](const demand::SupportReaction& forces, Uses& uses) {
        add_uses(uses, forces, fasteners, value);
    };
    return strength;
}

}  // namespace toehold::checks
