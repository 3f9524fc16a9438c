#pragma once
// A fastener pulled and pushed sideways at once: NDS 2018 12.4 (from memory, to be confirmed).
// `angle_rad`: between the wood's surface and the force, 0 (all lateral) to pi/2 (all withdrawal).

namespace toehold::resistance {

/// Lag and wood screws, Eq. 12.4-1: (W'p) Z' / ((W'p) cos^2 + Z' sin^2). `withdrawal_lb` is W'p. 0 where the part that
/// is needed is 0.
[[nodiscard]] double screw_combined_lb(double withdrawal_lb, double lateral_lb, double angle_rad);

/// Nails, Eq. 12.4-2: (W'p) Z' / ((W'p) cos + Z' sin).
[[nodiscard]] double nail_combined_lb(double withdrawal_lb, double lateral_lb, double angle_rad);

}  // namespace toehold::resistance
