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

    Moments& operator+=(const Moments& more) {
        area += more.area;
        x += more.x;
        y += more.y;
        xx += more.xx;
        xy += more.xy;
        yy += more.yy;
        return *this;
    }
    friend Moments operator-(const Moments& whole, const Moments& part) {
        return {whole.area - part.area, whole.x - part.x,   whole.y - part.y,
                whole.xx - part.xx,     whole.xy - part.xy, whole.yy - part.yy};
    }
};

/// Of the signed triangle that a side spans with the reference, about the reference. Inline: what cuts plates spends
/// its time here.
[[nodiscard]] inline Moments side_moments(Point from, Point to, Point reference) {
    const double x1 = from.x - reference.x, y1 = from.y - reference.y;
    const double x2 = to.x - reference.x, y2 = to.y - reference.y;
    const double cross = x1 * y2 - x2 * y1;
    return {cross / 2.0,
            cross * (x1 + x2) / 6.0,
            cross * (y1 + y2) / 6.0,
            cross * (x1 * x1 + x1 * x2 + x2 * x2) / 12.0,
            cross * (2.0 * (x1 * y1 + x2 * y2) + x1 * y2 + x2 * y1) / 24.0,
            cross * (y1 * y1 + y1 * y2 + y2 * y2) / 12.0};
}

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
