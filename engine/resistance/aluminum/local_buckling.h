#pragma once
// Local buckling of tube walls in aluminum: Aluminum Design Manual 2020 Part I, B.5.4, B.5.5 and the weighted average
// of F.3.1. Every clause and constant here is from memory, to be confirmed. in, psi.
#include "resistance/steel/tube.h"

namespace toehold::resistance::aluminum {

/// Which buckling constants: of artificially aged tempers (T5 to T9, Table B.4.2), or of all others and of metal a weld
/// has softened (Table B.4.1).
enum class Temper { aged, softened };

/// Compressive strength of a flat wall supported along both edges in uniform compression: yield, inelastic, then
/// elastic buckling with the strength left after it: B.5.4.2. `slenderness` b/t >= 0.
[[nodiscard]] double flat_wall_psi(double slenderness, double yield_psi, double modulus_psi, Temper temper);

/// The same of a wall along the load, compressed on one edge and pulled as much on the other: up to 1.5 Fy, B.5.5.1.
[[nodiscard]] double bent_wall_psi(double slenderness, double yield_psi, double modulus_psi);

/// The same of a round tube, radius to the middle of the wall over its thickness: B.5.4.5, taken for bending too, where
/// the wall is compressed at one place alone.
[[nodiscard]] double round_wall_psi(double slenderness, double yield_psi, double modulus_psi, Temper temper);

/// Nominal moment for which the walls buckle, lb in: the wall in compression and those along the load by their moments
/// of inertia and distances, F.3.1; a round tube on its elastic modulus, or, where its wall reaches yield, no limit
/// (the yielding of F.2 rules). Sections as drawn, corners square. `axis`: bent about.
[[nodiscard]] double tube_local_moment_lb_in(const steel::TubeShape& tube, steel::BentAbout axis, double yield_psi,
                                             double modulus_psi, Temper temper);

}  // namespace toehold::resistance::aluminum
