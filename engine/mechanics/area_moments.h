#pragma once
// Area integrals gathered edge by edge about a chosen reference point, and over the part of a polygon below a plane's
// zero line. Each directed edge adds the signed triangle it spans with the reference; an edge in line with the
// reference adds nothing. So a reference on the zero line makes the cut's own closing edges vanish: nothing has to be
// stored, and a thin strip of contact keeps all its digits.
#include "mechanics/geometry.h"
#include "mechanics/plane.h"

namespace toehold::mechanics {

struct AreaMoments {
    Point reference;
    Moments about_reference;  ///< of x - reference.x, y - reference.y
};

void add_edge(AreaMoments& moments, Point from, Point to);
[[nodiscard]] AreaMoments area_moments(const Polygon& polygon, Point reference);
[[nodiscard]] Moments about_origin(const AreaMoments& moments);

/// Over the part where `lift` < 0. `whole` belongs to the same polygon and is the answer when all of it lies below;
/// when the zero line cuts the polygon, the reference lies on that line.
[[nodiscard]] AreaMoments moments_below(const Polygon& polygon, const AreaMoments& whole, const Plane& lift);

}  // namespace toehold::mechanics
