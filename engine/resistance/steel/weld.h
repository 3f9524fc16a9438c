#pragma once
// Welds in steel, AISC 360-16 J2.4. Strengths are nominal, lb per inch of weld; legs and thicknesses in. The increase
// for a force across a fillet (J2.4(b)) is not taken: the weld runs round a thin tube.
#include "resistance/safety.h"

namespace toehold::resistance::steel {

inline constexpr Safety weld_safety{2.00, 0.75};

/// Throat of an equal-legged fillet, leg / sqrt(2), as 0.707 of the leg.
[[nodiscard]] double throat_in(double leg_in);

/// 0.60 FEXX on the throat, lb/in: J2.4(a), Table J2.5. `electrode_psi` is FEXX.
[[nodiscard]] double weld_metal_lb_per_in(double leg_in, double electrode_psi);

/// Least leg for the thinner part joined: Table J2.4 (1/8 in to 1/4 in thick, 3/16 to 1/2, 1/4 to 3/4, 5/16 above; read
/// in public text).
[[nodiscard]] double minimum_leg_in(double thinner_part_in);
/// Whether the leg is at least that, in inches or in the table's own millimeters (3, 5, 6 and 8 mm to 6, 13 and 19 mm
/// thick and above; read in the same). Within 0.001 in.
[[nodiscard]] bool is_minimum_leg(double leg_in, double thinner_part_in);

/// The same of the effective throat of a partial penetration groove: Table J2.3 (1/8 in for a thinner part to 1/4 in,
/// 3/16 to 1/2, 1/4 to 3/4, 5/16 to 1 1/2, 3/8 to 2 1/4, 1/2 to 6, 5/8 above; 3, 5, 6, 8, 10, 13 and 16 mm; read in
/// public text).
[[nodiscard]] double minimum_throat_in(double thinner_part_in);
[[nodiscard]] bool is_minimum_throat(double throat_in, double thinner_part_in);

/// A groove on its effective throat, 0.60 FEXX, lb/in: Table J2.5. Its safety is `weld_safety`, that of shear: a force
/// across a partial penetration groove would have 1.88 and 0.80 (read in public text).
[[nodiscard]] double groove_metal_lb_per_in(double throat_in, double electrode_psi);

}  // namespace toehold::resistance::steel
