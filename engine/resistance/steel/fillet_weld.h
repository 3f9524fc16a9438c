#pragma once
// Fillet welds in steel: AISC 360-16 J2.4. Strengths are nominal, lb per inch of weld; legs and thicknesses in.
// The increase for a force across the weld (J2.4(b)) is not taken: the weld runs round a thin tube.
#include "resistance/steel/safety.h"

namespace toehold::resistance::steel {

inline constexpr Safety weld_safety{2.00, 0.75};

/// Throat of an equal-legged fillet, leg / sqrt(2), as 0.707 of the leg.
[[nodiscard]] double throat_in(double leg_in);

/// 0.60 FEXX on the throat, lb/in: J2.4(a), Table J2.5. `electrode_psi` is FEXX.
[[nodiscard]] double weld_metal_lb_per_in(double leg_in, double electrode_psi);

/// Shear rupture of the part the weld is on, 0.60 Fu t, lb/in: J2.4(a) with J4.2(b). Its safety is `weld_safety`.
[[nodiscard]] double base_metal_lb_per_in(double thickness_in, double ultimate_psi);

/// Least leg for the thinner part joined: Table J2.4 (1/8 in to 1/4 in thick, 3/16 to 1/2, 1/4 to 3/4, 5/16 above; from
/// memory, to be confirmed).
[[nodiscard]] double minimum_leg_in(double thinner_part_in);

}  // namespace toehold::resistance::steel
