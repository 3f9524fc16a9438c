#pragma once
// Delaunay triangulation of points in the plane, by insertion (Bowyer 1981, Watson 1981) from left to right.
#include "mechanics/plane/geometry.h"

#include <array>
#include <span>
#include <vector>

namespace toehold::mechanics {

using Triangle = std::array<int, 3>;  ///< indices of points, counter-clockwise

/// Triangles of the convex hull of the points; no triangle is flatter than 1e-6 of its longest side squared. Points on
/// one circle or line are told apart by a shift of 1e-9 of the pattern's size that only the insertion sees. The same
/// points in the same order give the same triangles. Fewer than three points give none.
[[nodiscard]] std::vector<Triangle> delaunay(std::span<const Point> points);

}  // namespace toehold::mechanics
