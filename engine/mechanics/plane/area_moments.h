#pragma once
// Exact area integrals of polygons, and of the part of a polygon where a linear field is negative.
//
// They are gathered edge by edge about a chosen reference point. Each directed edge adds the signed triangle it spans
// with the reference; an edge in line with the reference adds nothing. So a reference on the zero line makes the cut's
// own closing edges vanish: nothing has to be stored, and a thin strip of contact keeps all its digits.
#include "mechanics/plane/geometry.h"

namespace toehold::mechanics {

/// Integrals over the polygon of 1, x, y, x^2, x y, y^2.
struct Moments {
    double area = 0.0, x = 0.0, y = 0.0, xx = 0.0, xy = 0.0, yy = 0.0;
};
[[nodiscard]] Moments moments(const Polygon& polygon);

struct AreaMoments {
    Point reference;
    Moments about_reference;  ///< of x - reference.x, y - reference.y
};

[[nodiscard]] AreaMoments area_moments(const Polygon& polygon, Point reference);
[[nodiscard]] Moments about_origin(const AreaMoments& moments);

/// Over the part where `lift` < 0. `whole` belongs to the same polygon and is the answer when all of it lies below;
/// when the zero line cuts the polygon, the reference lies on that line.
[[nodiscard]] AreaMoments moments_below(const Polygon& polygon, const AreaMoments& whole, const LinearField& lift);

}  // namespace toehold::mechanics
