#pragma once
// How far the walls of a stainless tube let it go in bending. AISC 370 and Design Guide 27 have limits of their own for
// stainless steel, lower than those of carbon steel; they are from memory, to be confirmed. Each is held below the
// class 2 or class 3 limit of EN 1993-1-4:2006 Table 5.2 (from memory too: 35 and 37 times epsilon for the wall in
// compression, 70 and 280 times its square for D/t of a round tube), so that both readings allow what this allows.
#include "resistance/steel/tube.h"

namespace toehold::resistance::steel {

enum class StainlessWalls {
    compact,      ///< the whole section yields: 1.12 root(E/Fy), round 0.07 E/Fy
    reach_yield,  ///< first yield: 1.24 root(E/Fy), round 0.31 E/Fy
    slender,      ///< not covered here
};

/// Flat widths are the outside ones less three walls. Each wall is held to the limit of the one in compression, since
/// for one of the two axes it is. `wall_in`: the designed one.
[[nodiscard]] StainlessWalls stainless_walls(const TubeShape& tube, double wall_in, double yield_psi,
                                             double modulus_psi);

}  // namespace toehold::resistance::steel
