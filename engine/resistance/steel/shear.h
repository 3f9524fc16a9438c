#pragma once
// Tubes and bars in shear, and the walls of a tube under a force spread along them: AISC 360-16 G4, G5, J10.2, from
// memory, to be confirmed. Nominal; in, lb, psi.
#include "resistance/safety.h"
#include "resistance/steel/tube.h"

namespace toehold::resistance::steel {

inline constexpr Safety shear_safety{1.67, 0.90};
inline constexpr Safety local_yield_safety{1.50, 1.00};  ///< J10.2

/// A rectangular tube, force along x or along y: 0.60 Fy on its two walls along the force, each less three walls, G4
/// with Cv2 = 1 (stocky walls, h/t up to 2.24 root(E/Fy)). A round tube: 0.60 Fy on half its area, G5. `wall_in`: the
/// designed one.
[[nodiscard]] double tube_shear_lb(const TubeShape& tube, double wall_in, bool along_x, double yield_psi);

/// A solid bar: 0.60 Fy on its area over the peak of an elastic section, 1.5, round 4/3.
[[nodiscard]] double bar_shear_lb(const TubeShape& bar, double yield_psi);

/// Force an inch along a tube that its two side walls (the two halves of a round one in hoop tension) yield under:
/// 2 Fy t. J10.2 without the spread at the ends of the force.
[[nodiscard]] double side_walls_lb_per_in(double wall_in, double yield_psi);

}  // namespace toehold::resistance::steel
