#pragma once
// A graded triangle mesh of a plate: fine at the post's foot and at the anchors, coarse between. Any unit of length.
#include "mechanics/flexible_plate/delaunay.h"
#include "mechanics/plane/geometry.h"

#include <span>
#include <vector>

namespace toehold::mechanics {

/// Where a washer or a fastener's head presses on the plate.
struct Footprint {
    Point center;
    double radius = 0.0;  ///< > 0
    friend bool operator==(const Footprint&, const Footprint&) = default;
};

struct PlateMesh {
    std::vector<Point> nodes;
    std::vector<Triangle> triangles;  ///< counter-clockwise
    std::vector<int> ring;            ///< nodes on the post's foot outline
};

/// `outline` and `ring` (the outline of the post's foot, inside the plate) are simple polygons, counter-clockwise.
/// `fineness` divides every element's size: 1 gives about 300 nodes on a common base, 2 four times as many. Curved
/// edges given as many short chords are resampled so that the mesh keeps their area. The same input gives the same
/// mesh.
[[nodiscard]] PlateMesh mesh_plate(const Polygon& outline, const Polygon& ring, std::span<const Footprint> footprints,
                                   double fineness);

}  // namespace toehold::mechanics
