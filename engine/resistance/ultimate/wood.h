#pragma once
// From the design values of lumber back to the strengths they were made of, and how those scatter. psi, at the speed of
// a test (minutes), dry, without any factor of load duration.

namespace toehold::resistance::ultimate {

/// Coefficients of variation of clear wood: the round values by which ASTM D2555-06 fills its table of species whose
/// own were not measured (read: baldcypress 1062/6640, 114/812, 113/403, 0.043/0.43); the same as the Wood Handbook's
/// averages. Species that were measured lie about them (western hemlock 0.16, 0.12, 0.28, 0.13; slash pine 0.13, 0.13,
/// 0.28, 0.11; read).
inline constexpr double clear_bending_variation = 0.16, clear_shear_variation = 0.14, clear_bearing_variation = 0.28,
                        density_variation = 0.10;
/// Within one member density does not vary, says the model code below: all anchors in a member share in one density.
/// Tension across the grain: 2.5 times that of density, as in the model code.
inline constexpr double clear_cross_tension_variation = 0.25;

/// Bending and shear strength of graded lumber, lognormal: Probabilistic Model Code of the Joint Committee on
/// Structural Safety, part 3, timber (read in its public repository; for European softwoods, a prior where nothing is
/// tested). Lumber of No. 2 grade may scatter more. Means are found from 5th percentiles, which stay where they are:
/// less scatter is the careful side for every load above the 5th percentile. Below it the chance of breaking is less
/// than 5 percent either way, and less scatter makes it too small.
inline constexpr double lumber_bending_variation = 0.25, lumber_shear_variation = 0.25;

/// 5th percentile of the bending strength of graded lumber: 2.1 Fb, the inverse of ASTM D1990 and D245 (1.6 for load
/// duration, 1.3 for safety; from memory, to be confirmed). `bending_psi` is the reference Fb with the factor of its
/// size, without those of duration or moisture.
[[nodiscard]] constexpr double bending_fifth_psi(double bending_psi) { return 2.1 * bending_psi; }

/// The same of shear, 2.1 Fv. Fv rests on clear wood's 5th percentile over 4.1: D245 takes 2.1 and almost as much again
/// for the shakes, checks and splits a piece may have (from memory, to be confirmed). Default: that the piece has them.
[[nodiscard]] constexpr double shear_fifth_psi(double shear_psi) { return 2.1 * shear_psi; }
/// Of a piece without any: 4.1 Fv.
[[nodiscard]] constexpr double unchecked_shear_fifth_psi(double shear_psi) { return 4.1 * shear_psi; }

/// Mean stress across the grain at which wood is pressed in by 0.04 in: 1.67 Fc-perp, ASTM D245 (from memory, to be
/// confirmed). No breaking stress: wood pressed across its grain gets denser and carries more.
[[nodiscard]] constexpr double bearing_mean_psi(double bearing_psi) { return 1.67 * bearing_psi; }

/// What a hold of so many seconds leaves of the strength under a load of 5 minutes, 0 to 1: the Madison curve, 18.3 +
/// 108.4 t^-0.0464 percent (L. W. Wood, report 1916, 1951; read in a paper that quotes it). No more than 1, so a load
/// of seconds counts as one of minutes. Throws std::invalid_argument unless seconds > 0.
[[nodiscard]] double share_left_after(double seconds);

/// A strength P at another moisture, M percent, between green and 12 percent: P12 (P12/Pg)^((12 - M)/(Mp - 12)), Wood
/// Handbook 2010 Eq. 5-3 with Mp = 25 for most species (from memory, to be confirmed). Moisture from 12 to Mp; above Mp
/// the wood is as if green. Throws std::invalid_argument unless both strengths are > 0 and M >= 12.
[[nodiscard]] double strength_at_moisture(double at_12_percent, double green, double moisture_percent);

}  // namespace toehold::resistance::ultimate
