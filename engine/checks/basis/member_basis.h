#pragma once
// The detail's basis (method, load duration, moisture, temperature, incising) applied to sawn lumber members:
// NDS 2018 Table 4.3.1. ASD gives an allowable stress, LRFD a factored one. Repetitive member factor never counted.
#include "checks/basis/adjusted.h"
#include "model/basis.h"
#include "resistance/wood/member_factors.h"

namespace toehold::checks {

/// A rectangular member bent about one of its axes. in, psi.
struct LumberShape {
    double breadth_in = 0.0;          ///< across the load, > 0
    double depth_in = 0.0;            ///< along the load, > 0; smaller than the breadth: loaded on the wide face
    bool size_factor_applies = true;  ///< catalog::LumberGrade::size_factor_applies
    /// For the beam stability factor. 0: held all along, or at least no deeper than broad, so CL = 1.0 (3.3.3).
    double unsupported_length_in = 0.0;
    double modulus_min_psi = 0.0;  ///< reference Emin, > 0 where an unsupported length is given
};

[[nodiscard]] resistance::MemberMoisture member_moisture(const model::Basis& basis);
[[nodiscard]] resistance::MemberTemperature member_temperature(const model::Basis& basis);

/// Fb' from Fb, psi, with CF, Cfu on the wide face and CL.
[[nodiscard]] Adjusted adjust_bending(double bending_psi, const LumberShape& shape, const model::Basis& basis);
/// Fv' from Fv, psi.
[[nodiscard]] Adjusted adjust_shear(double shear_psi, const model::Basis& basis);
/// From the reference value through every factor to Fv'.
[[nodiscard]] std::vector<Step> allowable_shear_steps(double shear_psi, const Adjusted& adjusted);
/// Fc,perp' from Fc,perp, psi; Cb is taken as 1.0, which is on the safe side.
[[nodiscard]] Adjusted adjust_compression_perp(double compression_perp_psi, const model::Basis& basis);
/// Emin' from Emin, psi.
[[nodiscard]] Adjusted adjust_modulus_min(double modulus_min_psi, const model::Basis& basis);
/// E' from E, psi.
[[nodiscard]] Adjusted adjust_modulus(double modulus_psi, const model::Basis& basis);

}  // namespace toehold::checks
