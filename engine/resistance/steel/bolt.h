#pragma once
// Bolts and threaded parts in tension, in shear and in both: AISC 360-16 J3.6 and J3.7. Stresses psi, areas in2.
// The nominal stresses were read in Table J3.2 of AISC 360-10 and stand unchanged in 360-16 (from memory, to be
// confirmed); the 2005 edition prints others. All strengths are nominal: `bolt_safety` makes them usable.
#include "resistance/steel/safety.h"

namespace toehold::resistance::steel {

inline constexpr Safety bolt_safety{2.00, 0.75};

[[nodiscard]] double circle_area_in2(double diameter_in);

/// Fnt of a threaded part, 0.75 Fu, on the area of its nominal diameter: Table J3.2.
[[nodiscard]] double threaded_tension_psi(double ultimate_psi);
/// Fnv of a threaded part with threads in the shear plane, 0.450 Fu, on the same area: Table J3.2.
[[nodiscard]] double threaded_shear_psi(double ultimate_psi);

/// F'nt, psi: the nominal tension stress left beside a shear, Eq. J3-3a and J3-3b in one, since omega/Fnv and
/// 1/(phi Fnv) are both 1 over the available shear stress. Between 0 and Fnt.
[[nodiscard]] double combined_tension_psi(double nominal_tension_psi, double shear_psi, double available_shear_psi);

/// The same limit as one ratio of demand to capacity: the largest of tension alone, shear alone, and
/// (tension + shear) / 1.3, each as a ratio of its available strength. 1 exactly where F'nt is used up.
[[nodiscard]] double combined_ratio(double tension_ratio, double shear_ratio);

}  // namespace toehold::resistance::steel
