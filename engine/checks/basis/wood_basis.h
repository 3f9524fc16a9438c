#pragma once
// The detail's basis (method, load duration, moisture, temperature, incising) applied to wood: to connections by NDS
// 2018 Table 11.3.1 and to sawn lumber members by Table 4.3.1. ASD gives an allowable value, LRFD a factored one.
#include "catalog/rows.h"
#include "checks/basis/result_parts.h"
#include "model/basis.h"
#include "resistance/wood/connection_factors.h"
#include "resistance/wood/member_factors.h"

#include <string>
#include <vector>

namespace toehold::checks {

[[nodiscard]] resistance::ConnectionMoisture connection_moisture(const model::Basis& basis);
[[nodiscard]] resistance::ConnectionTemperature connection_temperature(const model::Basis& basis);

/// Lag or wood screw in withdrawal from side grain: W' from W. lb, or lb/in for lb/in.
[[nodiscard]] Adjusted adjust_withdrawal(double reference_lb, const model::Basis& basis);

struct LateralConditions {
    double diameter_in = 0.0;                    ///< nominal
    bool single_row_or_single_fastener = false;  ///< in the wood member: one fastener, or one row parallel to grain
    double geometry_factor = 1.0;                ///< CDelta, 12.5.1
    double group_factor = 1.0;                   ///< Cg, 11.3.6
    double end_grain_factor = 1.0;               ///< Ceg, 12.5.2; 1 in side grain
};

/// Dowel-type fastener loaded across its axis: Z' from Z, lb.
[[nodiscard]] Adjusted adjust_lateral(double reference_lb, const LateralConditions& conditions,
                                      const model::Basis& basis);

/// An allowable (ASD) value a report states, made comparable with the demand: as it is under ASD; times the live
/// load's factor 1.6 under LRFD (assumption: the report's safety margin is kept on the factored load).
[[nodiscard]] Adjusted reported_value(double allowable, std::string unit, const model::Basis& basis);

// Sawn lumber members. The repetitive member factor is never counted.

/// A rectangular member bent about one of its axes, in.
struct BentSection {
    double breadth_in = 0.0;  ///< across the load, > 0
    double depth_in = 0.0;    ///< along the load, > 0; smaller than the breadth: loaded on the wide face
    /// For the beam stability factor. 0: held all along, or at least no deeper than broad, so CL = 1.0 (3.3.3).
    double unsupported_length_in = 0.0;
};

[[nodiscard]] resistance::MemberMoisture member_moisture(const model::Basis& basis);
[[nodiscard]] resistance::MemberTemperature member_temperature(const model::Basis& basis);

// A grade says which factors its values take: sawn lumber those of NDS 2018 Table 4.3.1, with the moisture and size
// factors of its own table of the Supplement; a material of the file's own those the file states, and never incising.

/// The reference value Fb of the grade for this way of bending, psi: a material of the file's own has two.
[[nodiscard]] double reference_bending_psi(const catalog::LumberGrade& grade, const BentSection& section);
/// Fb', psi, from it, with the factors of size or volume, flat use and beam stability.
[[nodiscard]] Adjusted adjust_bending(const catalog::LumberGrade& grade, const BentSection& section,
                                      const model::Basis& basis);
/// Fv' from the grade's Fv, psi.
[[nodiscard]] Adjusted adjust_shear(const catalog::LumberGrade& grade, const model::Basis& basis);
/// From the reference value through every factor to Fv'.
[[nodiscard]] std::vector<Step> allowable_shear_steps(const catalog::LumberGrade& grade, const Adjusted& adjusted);
/// Fc,perp' from the grade's Fc,perp, psi, before Cb.
[[nodiscard]] Adjusted adjust_compression_perp(const catalog::LumberGrade& grade, const model::Basis& basis);
/// The same of a board's value, as of dimension lumber.
[[nodiscard]] Adjusted adjust_compression_perp(double compression_perp_psi, const model::Basis& basis);
/// Emin' from the grade's Emin, psi.
[[nodiscard]] Adjusted adjust_modulus_min(const catalog::LumberGrade& grade, const model::Basis& basis);
/// E' from the grade's E, psi.
[[nodiscard]] Adjusted adjust_modulus(const catalog::LumberGrade& grade, const model::Basis& basis);

}  // namespace toehold::checks
