#pragma once
// Solid rectangular bars of aluminum bent about their stronger axis: lateral-torsional buckling, Aluminum Design Manual
// 2020 Part I F.4. Every clause and constant here is from memory, to be confirmed. Nominal moments, lb in; in, psi.

namespace toehold::resistance::aluminum {

/// Elastic critical moment under a uniform moment (Cb = 1), closed form: pi/L root(E Iy G J), with the shear modulus
/// E/2.66. The bar `depth_in` along the load, no less than `thickness_in`; `unbraced_in` > 0.
[[nodiscard]] double bar_critical_moment_lb_in(double thickness_in, double depth_in, double unbraced_in,
                                               double modulus_psi);

/// Moment at which the bar buckles sideways, F.4.1 with the constants Bc, Dc, Cc of artificially aged tempers: between
/// the plastic moment `plastic_lb_in` (no slenderness) and the elastic critical one.
[[nodiscard]] double bar_lateral_moment_lb_in(double thickness_in, double depth_in, double unbraced_in,
                                              double plastic_lb_in, double yield_psi, double modulus_psi);

}  // namespace toehold::resistance::aluminum
