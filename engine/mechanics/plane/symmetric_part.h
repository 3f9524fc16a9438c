#pragma once
// The part of an area that a uniform pressure may cover and still have its resultant at a given point.
#include "mechanics/plane/geometry.h"

namespace toehold::mechanics {

/// Every corner turns to the left, or none: counter-clockwise, straight corners allowed; at least three corners.
[[nodiscard]] bool is_convex(const Polygon& polygon);

/// The polygon met with its own image turned half a turn about the centre: symmetric about it, so that a uniform
/// pressure on it has its resultant there. For a rectangle it is the effective area of a footing under an eccentric
/// load (Meyerhof 1953): b - 2 e by l - 2 e. `convex` as `is_convex` says. No corners where the centre lies outside.
[[nodiscard]] Polygon symmetric_part(const Polygon& convex, Point centre);

}  // namespace toehold::mechanics
