#pragma once
// A second way to the rigid plate, sharing nothing with the engine's: every patch is cut into many small triangles with
// one spring each, and the energy is brought down one unknown at a time by bisection, with no derivatives of second
// order, no clipping and no linear algebra. The answer is exact up to the triangles' size h, with an error of h^2.
#include "mechanics/rigid_plate/rigid_plate.h"

#include <array>
#include <vector>

namespace toehold::test {

using Triangle = std::array<mechanics::Point, 3>;

struct TriangulatedPatch {
    std::vector<Triangle> triangles;
    double stiffness_psi_per_in = 0.0;
};

/// A fan about the first corner: right for convex outlines and for any seen whole from that corner.
[[nodiscard]] std::vector<Triangle> fan(const mechanics::Polygon& outline);

/// Tensions with every triangle cut `halvings` times into four.
[[nodiscard]] std::vector<double> spring_grid_tensions(const std::vector<mechanics::AnchorSpring>& anchors,
                                                       const std::vector<TriangulatedPatch>& bed,
                                                       const mechanics::PlateLoad& load, int halvings);

}  // namespace toehold::test
