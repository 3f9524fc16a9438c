#pragma once
// How near a hole may come to a plate's edge, and what the plate holds when the bolt leans on the hole. in, lb, psi.
#include "resistance/steel/safety.h"

namespace toehold::resistance::steel {

inline constexpr Safety bearing_safety{2.00, 0.75};

/// Least distance from the centre of a standard hole to an edge: AISC 360-16 Table J3.4 (read in a public copy of the
/// page). A size between two rows takes the larger row. The table begins at 1/2 in; below it 1.5 D, the ratio of that
/// first row, is taken (common practice).
[[nodiscard]] double minimum_edge_distance_in(double diameter_in);

/// Standard hole, D + 1/16 in: Table J3.3 for bolts under 1 in. Taken for larger ones as well, where the table of 2016
/// allows 1/8 in: the smaller hole is on the safe side for a clear distance.
[[nodiscard]] double standard_hole_in(double diameter_in);

/// Nominal bearing or tear-out at a hole, deformation at service load being a design consideration:
/// min(1.2 lc t Fu, 2.4 D t Fu), AISC 360-16 J3.10(a)(1), Eq. J3-6a and J3-6c. `clear_in`: from the hole's edge to the
/// plate's edge along the force, >= 0.
[[nodiscard]] double hole_bearing_lb(double clear_in, double diameter_in, double thickness_in, double ultimate_psi);

}  // namespace toehold::resistance::steel
