#include "resistance/steel/stainless.h"

#include <algorithm>
#include <cmath>

namespace toehold::resistance::steel {

StainlessWalls stainless_walls(const TubeShape& tube, double wall_in, double yield_psi, double modulus_psi) {
    const double stiffness = modulus_psi / yield_psi;
    const double widest_in = std::max(tube.width_in, tube.depth_in);
    const double slenderness = tube.round ? widest_in / wall_in : widest_in / wall_in - 3.0;
    const double compact = tube.round ? 0.07 * stiffness : 1.12 * std::sqrt(stiffness);
    const double yields = tube.round ? 0.31 * stiffness : 1.24 * std::sqrt(stiffness);
    if (slenderness <= compact) return StainlessWalls::compact;
    return slenderness <= yields ? StainlessWalls::reach_yield : StainlessWalls::slender;
}

}  // namespace toehold::resistance::steel
