#include "mechanics/geometry.h"

#include "mechanics/area_moments.h"
#include "mechanics/plane.h"

namespace toehold::mechanics {

// One pass of the clipping of Sutherland and Hodgman (Communications of the ACM 17, 1974).
Polygon clip_half_plane(const Polygon& polygon, double a, double b, double c) {
    const Plane outside{a, b, c};
    Polygon kept;
    if (polygon.size() < 3) return kept;
    kept.reserve(polygon.size() + 2);
    Point from = polygon.back();
    double value_from = outside.at(from);
    for (const Point& to : polygon) {
        const double value_to = outside.at(to);
        if ((value_from < 0.0 && value_to > 0.0) || (value_from > 0.0 && value_to < 0.0)) {
            kept.push_back(crossing(from, value_from, to, value_to));
        }
        if (value_to <= 0.0) kept.push_back(to);
        from = to;
        value_from = value_to;
    }
    if (kept.size() < 3) kept.clear();
    return kept;
}

Polygon clip_rectangle(const Polygon& polygon, double x_min, double x_max, double y_min, double y_max) {
    const Polygon right_of_left = clip_half_plane(polygon, x_min, -1.0, 0.0);
    const Polygon strip = clip_half_plane(right_of_left, -x_max, 1.0, 0.0);
    const Polygon above_bottom = clip_half_plane(strip, y_min, 0.0, -1.0);
    return clip_half_plane(above_bottom, -y_max, 0.0, 1.0);
}

Moments moments(const Polygon& polygon) {
    if (polygon.empty()) return {};
    // About a corner of its own, so that a polygon far from the origin keeps its digits.
    return about_origin(area_moments(polygon, polygon.front()));
}

}  // namespace toehold::mechanics
