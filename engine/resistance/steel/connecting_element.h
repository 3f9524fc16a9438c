#pragma once
// Metal beside a weld as an element of a connection: AISC 360-16 J4.1 tension and J4.2 shear. Nominal strengths of an
// inch of length, lb/in; in, psi. The factors for yielding of base metal, 0.90 and 1.67, stand in public copies of
// Table J2.5 too; those of rupture are the weld's.
#include "resistance/safety.h"

namespace toehold::resistance::steel {

inline constexpr Safety tension_yield_safety{1.67, 0.90};
inline constexpr Safety shear_yield_safety{1.50, 1.00};
inline constexpr Safety element_rupture_safety{2.00, 0.75};

/// Fy t: J4.1(a).
[[nodiscard]] double tension_yield_lb_per_in(double thickness_in, double yield_psi);
/// Fu t: J4.1(b).
[[nodiscard]] double tension_rupture_lb_per_in(double thickness_in, double ultimate_psi);
/// 0.60 Fy t: J4.2(a).
[[nodiscard]] double shear_yield_lb_per_in(double thickness_in, double yield_psi);
/// 0.60 Fu t: J4.2(b).
[[nodiscard]] double shear_rupture_lb_per_in(double thickness_in, double ultimate_psi);

}  // namespace toehold::resistance::steel
