#pragma once
// Fillet welds and holes in aluminum: Aluminum Design Manual 2020 Part I, J.2.2 and J.3. Every clause and factor here
// is from memory, to be confirmed. Nominal strengths; lb, in, psi; safety is `rupture_safety` for all.

namespace toehold::resistance::aluminum {

/// Filler in shear on the throat, 0.707 leg x Fsu of the filler, lb per inch of weld: J.2.2.2(a).
[[nodiscard]] double weld_filler_lb_per_in(double leg_in, double filler_shear_psi);

/// Welded base metal in shear along the leg, 0.6 Ftu,w x leg, lb per inch: J.2.2.2(b). A force across the weld may
/// count Ftu,w; the smaller shear value is taken whatever the direction. A leg thicker than the part counts as the
/// part.
[[nodiscard]] double weld_base_metal_lb_per_in(double leg_in, double thickness_in, double welded_ultimate_psi);

/// Least distance from a hole's centre to an edge, 1.5 D: J.3.
[[nodiscard]] double minimum_edge_distance_in(double diameter_in);

/// Bearing at a hole: min(de, 2 D) t Ftu: J.3. `edge_in`: from the hole's centre to the edge along the force.
[[nodiscard]] double hole_bearing_lb(double edge_in, double diameter_in, double thickness_in, double ultimate_psi);

}  // namespace toehold::resistance::aluminum
