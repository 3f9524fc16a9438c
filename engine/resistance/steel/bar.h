#pragma once
// Solid bars in bending: AISC 360-16 F11, yielding and lateral-torsional buckling. Nominal; in, lb, psi; the safety is
// `flexure_safety`. Eq. F11-2 to F11-4 were seen in a handbook's chapter on the edition of 2005, which later ones keep.

namespace toehold::resistance::steel {

/// A rectangular bar bent about its stronger axis, `depth_in` along the load and no less than `thickness_in`.
/// Eq. F11-1 (Fy Z, no more than 1.6 Fy S), F11-2 and F11-3, F11-4 with Cb = 1: the free end of the post is held by
/// nothing (F1). `unbraced_in` >= 0.
[[nodiscard]] double flat_bar_moment_lb_in(double thickness_in, double depth_in, double unbraced_in, double yield_psi,
                                           double modulus_psi);

/// A bar that cannot buckle sideways: square, round, or a rectangle bent about its weaker axis. Fy Z, no more than 1.6
/// Fy S: Eq. F11-1.
[[nodiscard]] double stocky_bar_moment_lb_in(double section_in3, double plastic_in3, double yield_psi);

}  // namespace toehold::resistance::steel
