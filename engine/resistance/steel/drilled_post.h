#pragma once
// A tube or bar drilled through from front to back: the plastic moduli its holes take away. in, in3.
#include "resistance/steel/tube.h"

#include <span>

namespace toehold::resistance::steel {

/// A hole along y, through both walls that face y or through a solid bar.
struct PostHole {
    double across_in = 0.0;  ///< of its center from the post's axis, along x
    double diameter_in = 0.0;
};

/// Share of the moment about x and about y that is left at the holes, 0 to 1.
struct LeftAtHoles {
    double about_x = 1.0, about_y = 1.0;
};

/// A rectangular tube with the designed wall, or a solid rectangular bar. Net plastic modulus over the whole one; about
/// x a tube's tension wall must not break at the hole before the whole yields, either: F_u A_fn/A_fg S against F_y Z
/// where F_u A_fn is less than Y_t F_y A_fg (AISC 360-16 F13.1, from memory,
/// to be confirmed; read across from flanges of rolled shapes). The middle
/// of the whole section is kept as the axis.
[[nodiscard]] LeftAtHoles left_at_holes(const TubeShape& post, bool solid, double wall_in, const TubeSection& section,
                                        double yield_psi, double ultimate_psi, std::span<const PostHole> holes);

}  // namespace toehold::resistance::steel
