#pragma once
// The flat wall of a rectangular tube pressed in by what bears on a round spot of it: a washer, a head. in, lb, psi.
#include "resistance/safety.h"

namespace toehold::resistance::steel {

inline constexpr Safety wall_plastification_safety{1.50, 1.00};

/// Nominal force at which the wall yields, the lesser of two patterns of yield lines, m = F_y t^2/4:
///   - straight lines round the square of the same area, its corners to the wall's: F_y t^2/(1 - b) (2 b + 4 root(1 -
///     b)), b the square's side over the wall's width. It is the form of AISC 360-16 K1 for a plate on a tube's wall
///     (from memory, to be confirmed), and follows from the pattern (tests).
///   - a fan round the spot out to both sides of the wall: 4 pi m/(1 - d/B) (common practice).
/// A spot counts as no wider than 0.85 of the wall. `width_in` B across the tube; `wall_in` the designed thickness.
[[nodiscard]] double pressed_wall_lb(double width_in, double wall_in, double spot_diameter_in, double yield_psi);

}  // namespace toehold::resistance::steel
