#include "checks/connection/side_angle_leg.h"

#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "resistance/wood/connection_factors.h"
#include "resistance/wood/dowel_properties.h"
#include "resistance/wood/fastener_placement.h"
#include "resistance/wood/withdrawal.h"
#include "resistance/wood/yield_limit.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;
using model::SideAngles;
using Kind = model::SideAngles::Kind;

/// That counts in the yield equations.
double yield_diameter_in(const SideAngles& angles) {
    if (angles.threads == model::Threads::excluded) return angles.diameter_in;
    switch (angles.kind) {
        case Kind::lag_screw:
            return 0.69 * angles.diameter_in;
        case Kind::wood_screw:
            return 0.78 * angles.diameter_in;
        case Kind::bolt:
            break;
    }
    return 0.75 * angles.diameter_in;
}

double tip_in(const SideAngles& angles) {
    if (angles.kind == Kind::bolt) return 0.0;
    return angles.kind == Kind::lag_screw ? angles.diameter_in * 2.0 / 3.0 : 2.0 * angles.diameter_in;
}

double thread_in(const SideAngles& angles) {
    return angles.kind == Kind::lag_screw ? resistance::lag_thread_length_in(angles.length_in)
                                          : angles.length_in * 2.0 / 3.0;
}

double bending_yield_psi(const SideAngles& angles) {
    switch (angles.kind) {
        case Kind::lag_screw:
            return resistance::lag_bending_yield_psi(angles.diameter_in);
        case Kind::wood_screw:
            return resistance::nail_bending_yield_psi(angles.diameter_in);
        case Kind::bolt:
            break;
    }
    return resistance::bolt_bending_yield_psi();
}

/// Into the wood, tip included.
double penetration_in(const SideAngles& angles, const AngleLeg& leg) {
    if (angles.kind == Kind::bolt) return leg.reach_in;
    return std::clamp(angles.length_in - angles.thickness_in, 0.0, leg.reach_in);
}

/// The least the standard asks for, tip included.
double least_penetration_in(const SideAngles& angles) {
    if (angles.kind == Kind::bolt) return 0.0;
    return angles.kind == Kind::lag_screw ? resistance::lag_minimum_penetration_in(angles.diameter_in) + tip_in(angles)
                                          : resistance::wood_screw_minimum_penetration_in(angles.diameter_in);
}

double angle_bearing_psi(const catalog::Metal& metal, double thickness_in) {
    return metal.kind == catalog::MetalKind::aluminum
               ? resistance::aluminum_dowel_bearing_psi(metal.ultimate_psi)
               : resistance::steel_dowel_bearing_psi(metal.ultimate_psi, thickness_in);
}

resistance::ModeValue reference_lateral(const SideAngles& angles, const catalog::Metal& metal, const AngleLeg& leg) {
    constexpr double across_grain_rad = 0.5 * std::numbers::pi;
    resistance::DowelConnection dowel;
    dowel.diameter_in = yield_diameter_in(angles);
    dowel.bending_yield_psi = bending_yield_psi(angles);
    dowel.main_bearing_in = penetration_in(angles, leg) - 0.5 * tip_in(angles);
    dowel.side_bearing_in = angles.thickness_in;
    dowel.main_bearing_psi = resistance::dowel_bearing_psi(leg.specific_gravity, angles.diameter_in, across_grain_rad);
    dowel.side_bearing_psi = angle_bearing_psi(metal, angles.thickness_in);
    return resistance::governing(resistance::single_shear(
        dowel, resistance::reduction_terms(angles.diameter_in, dowel.diameter_in, across_grain_rad)));
}

/// The row is upright, across the grain: its wood is as wide as the least spacing (NDS 2018 11.3.6.3, from memory).
double row_factor(const SideAngles& angles, const catalog::Metal& metal, const AngleLeg& leg) {
    resistance::FastenerRow row;
    row.count = angles.per_leg;
    row.spacing_in = angles.spacing_in;
    row.diameter_in = angles.diameter_in;
    row.slip_modulus_lb_per_in = resistance::wood_to_metal_slip_modulus_lb_per_in(angles.diameter_in);
    row.main_axial_stiffness_lb = leg.modulus_psi * leg.reach_in * 3.0 * angles.diameter_in;
    row.side_axial_stiffness_lb = metal.modulus_psi * angles.thickness_in * angles.gauge_in;
    return resistance::group_factor(row);
}

/// Of a force this way. The couple of each leg's eccentricity acts along the grain, on one of its fasteners towards the
/// end.
double placement_factor(const SideAngles& angles, const AngleLeg& leg, resistance::EndLoading loading) {
    if (!units::at_least(angles.diameter_in, resistance::least_tabulated_diameter_in())) return 1.0;
    double factor = 1.0;
    if (angles.per_leg > 1) factor = resistance::spacing_factor(angles.spacing_in, angles.diameter_in);
    if (leg.end_in > 0.0)
        factor = std::min(factor, resistance::end_distance_factor(leg.end_in, angles.diameter_in, loading));
    return factor;
}

double placement_factor(const SideAngles& angles, const AngleLeg& leg) {
    return placement_factor(angles, leg, resistance::EndLoading::perpendicular);
}

double least_edge_in(const SideAngles& angles) {
    return !units::at_least(angles.diameter_in, resistance::least_tabulated_diameter_in())
               ? 0.0
               : resistance::loaded_edge_in(angles.diameter_in);
}

format::Phrase why_none(const SideAngles& angles, const AngleLeg& leg) {
    if (!units::at_least(penetration_in(angles, leg), least_penetration_in(angles)))
        return phrase("Penetration {} is below the minimum of {}, {}. Use longer fasteners.",
                      Dimension{penetration_in(angles, leg)}, Dimension{least_penetration_in(angles)}, leg.name);
    if (leg.edge_in <= 0.0)
        return phrase("The fasteners spread past the wood's edge, {}. Reduce their spacing.", leg.name);
    if (!units::at_least(leg.edge_in, least_edge_in(angles)))
        return phrase("Edge distance {} of the outermost fastener is below the minimum of {} (4 D), {}.",
                      Dimension{leg.edge_in}, Dimension{least_edge_in(angles)}, leg.name);
    if (placement_factor(angles, leg) <= 0.0)
        return phrase("Spacing is below 3 D or end distance is below 2 D, {}.", leg.name);
    return {};
}

Adjusted adjust(const SideAngles& angles, const catalog::Metal& metal, const AngleLeg& leg, double reference_lb,
                const model::Basis& basis) {
    LateralConditions conditions;
    conditions.diameter_in = angles.diameter_in;
    conditions.single_row_or_single_fastener = angles.per_leg == 1;
    conditions.geometry_factor = placement_factor(angles, leg);
    conditions.group_factor = row_factor(angles, metal, leg);
    return adjust_lateral(reference_lb, conditions, basis);
}

}  // namespace

LegValue leg_lateral(const SideAngles& angles, const catalog::Metal& metal, const AngleLeg& leg,
                     const model::Basis& basis) {
    LegValue value;
    value.why = why_none(angles, leg);
    if (!value.why.empty()) return value;
    const resistance::ModeValue reference = reference_lateral(angles, metal, leg);
    const Adjusted adjusted = adjust(angles, metal, leg, reference.value_lb, basis);
    value.value_lb = adjusted.value;
    value.towards_end =
        ratio(placement_factor(angles, leg), placement_factor(angles, leg, resistance::EndLoading::toward));
    value.steps = {{"p_" + leg.mark, phrase("penetration into the wood, {}", leg.name),
                    angles.kind == Kind::bolt ? "through it" : "length less the angle's thickness",
                    penetration_in(angles, leg), "in", ""},
                   {"Z_" + leg.mark,
                    phrase("reference lateral value, {}, mode {} governs", leg.name, resistance::name(reference.mode)),
                    "least of the yield modes", reference.value_lb, "lb", "NDS 2018 12.3.1"}};
    append(value.steps, adjusted.steps);
    value.steps.push_back({"Z_" + leg.mark + "'", phrase("adjusted lateral value, {}", leg.name),
                           "Z times every factor", adjusted.value, "lb", "NDS 2018 Table 11.3.1"});
    if (value.towards_end > 1.0 && std::isfinite(value.towards_end))
        value.steps.push_back(
            {"e_" + leg.mark, phrase("force along the grain towards the end counts this much more, {}", leg.name),
             "C_Delta across over C_Delta along, 4 D and 7 D", value.towards_end, "", "NDS 2018 Table 12.5.1A"});
    return value;
}

LegValue leg_withdrawal(const SideAngles& angles, const AngleLeg& leg, const model::Basis& basis) {
    LegValue value;
    if (angles.kind == Kind::bolt) {
        value.why = phrase(
            "Tension on the bolts of angles is not covered: their washers are not specified. Use screws or "
            "hardware with a report.");
        return value;
    }
    value.why = why_none(angles, leg);
    if (!value.why.empty()) return value;
    const bool lag = angles.kind == Kind::lag_screw;
    const double per_in = lag ? resistance::lag_withdrawal_lb_per_in(leg.specific_gravity, angles.diameter_in)
                              : resistance::wood_screw_withdrawal_lb_per_in(leg.specific_gravity, angles.diameter_in);
    const double held_in = resistance::effective_thread_in(angles.length_in, thread_in(angles), tip_in(angles),
                                                           angles.thickness_in, leg.reach_in);
    const Adjusted adjusted = adjust_withdrawal(per_in * held_in, basis);
    value.value_lb = adjusted.value;
    if (!(held_in > 0.0))
        value.why = phrase("No thread of the fasteners is in the wood, {}. Use longer fasteners.", leg.name);
    value.steps = {{"W_" + leg.mark, phrase("reference withdrawal value, {}", leg.name), "", per_in, "lb/in",
                    lag ? "NDS 2018 Eq. 12.2-1" : "NDS 2018 Eq. 12.2-2"},
                   {"p_t", phrase("thread in the wood, tip excluded"), "", held_in, "in", "NDS 2018 12.2"}};
    append(value.steps, adjusted.steps);
    value.steps.push_back({"W_" + leg.mark + "'", phrase("adjusted withdrawal value, one fastener"),
                           "W p_t times every factor", adjusted.value, "lb", "NDS 2018 Table 11.3.1"});
    return value;
}

}  // namespace toehold::checks
