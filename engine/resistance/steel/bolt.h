#pragma once
// Bolts and threaded parts in tension, in shear and in both, and the holes they stand in: AISC 360-16 J3. in, lb, psi.
// All strengths are nominal: `bolt_safety` and `bearing_safety` make them usable. The nominal stresses were read in
// Table J3.2 of AISC 360-10 and stand unchanged in 360-16 (from memory, to be confirmed); the 2005 edition prints
// others.
#include "resistance/safety.h"

namespace toehold::resistance::steel {

inline constexpr Safety bolt_safety{2.00, 0.75};

[[nodiscard]] double circle_area_in2(double diameter_in);

/// Fnt of a threaded part, 0.75 Fu, on the area of its nominal diameter: Table J3.2.
[[nodiscard]] double threaded_tension_psi(double ultimate_psi);
/// Fnv of a threaded part with threads in the shear plane, 0.450 Fu, on the same area: Table J3.2.
[[nodiscard]] double threaded_shear_psi(double ultimate_psi);

/// F'nt, psi, J3.7: the nominal tension stress left beside a shear, Eq. J3-3a and J3-3b in one, since omega/Fnv and
/// 1/(phi Fnv) are both 1 over the available shear stress. Between 0 and Fnt.
[[nodiscard]] double combined_tension_psi(double nominal_tension_psi, double shear_psi, double available_shear_psi);

/// The same limit as one ratio of demand to capacity: the largest of tension alone, shear alone, and
/// (tension + shear) / 1.3, each as a ratio of its available strength. 1 exactly where F'nt is used up.
[[nodiscard]] double combined_ratio(double tension_ratio, double shear_ratio);

// How near a hole may come to a plate's edge, and what the plate holds when the bolt leans on the hole.

inline constexpr Safety bearing_safety{2.00, 0.75};

/// Least distance from the center of a standard hole to an edge: AISC 360-16 Table J3.4 (read in a public copy of the
/// page). A size between two rows takes the larger row. The table begins at 1/2 in; below it 1.5 D, the ratio of that
/// first row, is taken (common practice).
[[nodiscard]] double minimum_edge_distance_in(double diameter_in);

/// Standard hole, D + 1/16 in: Table J3.3 for bolts under 1 in. Taken for larger ones as well, where the table of 2016
/// allows 1/8 in: the smaller hole is on the safe side for a clear distance.
[[nodiscard]] double standard_hole_in(double diameter_in);
/// The next drill in 1/64 in: a number screw's diameter and 1/16 in make no size of drill (common practice).
[[nodiscard]] double drilled_in(double hole_in);
/// Largest hole the table calls standard: as above under 1 in, D + 1/8 in from 1 in on: Table J3.3 (from memory).
[[nodiscard]] double largest_standard_hole_in(double diameter_in);
/// Oversize hole: 5/8 in for a bolt of 1/2 in, 13/16 for 5/8, 15/16 for 3/4, 1 1/16 for 7/8, 1 1/4 for 1 in, D + 5/16
/// above: Table J3.3 (from memory, to be confirmed). A size between two rows has what the smaller row adds to D. The
/// table begins at 1/2 in; below it D + 1/8, what that row adds, is taken.
[[nodiscard]] double oversize_hole_in(double diameter_in);

/// Nominal bearing or tear-out at a hole, deformation at service load being a design consideration:
/// min(1.2 lc t Fu, 2.4 D t Fu), AISC 360-16 J3.10(a)(1), Eq. J3-6a and J3-6c. `clear_in`: from the hole's edge to the
/// plate's edge along the force, >= 0.
[[nodiscard]] double hole_bearing_lb(double clear_in, double diameter_in, double thickness_in, double ultimate_psi);
/// The same of one wall of a tube that a bolt goes through, which nothing stiffens: 1.8 Fy D t, AISC 360-16 J3.10(c)
/// and Eq. J7-1 (from memory, to be confirmed).
[[nodiscard]] constexpr double tube_hole_bearing_lb(double diameter_in, double wall_in, double yield_psi) {
    constexpr double bearing_over_yield = 1.8;
    return bearing_over_yield * yield_psi * diameter_in * wall_in;
}

}  // namespace toehold::resistance::steel
