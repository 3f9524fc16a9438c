#pragma once
// Plane polygons: clipping and exact area integrals. Any consistent unit of length.
#include <span>
#include <vector>

namespace toehold::mechanics {

struct Point {
    double x = 0.0;
    double y = 0.0;
    friend bool operator==(const Point&, const Point&) = default;
};

using Polygon = std::vector<Point>;  ///< closed, last corner joins the first; counter-clockwise is positive

/// Keeps the part where a + b x + c y <= 0. Exact for any simple polygon as far as area integrals go
/// (a non-convex polygon may come back with coincident edges, which carry no area).
[[nodiscard]] Polygon clip_half_plane(const Polygon& polygon, double a, double b, double c);
[[nodiscard]] Polygon clip_rectangle(const Polygon& polygon, double x_min, double x_max, double y_min, double y_max);

/// Integrals over the polygon of 1, x, y, x^2, x y, y^2.
struct Moments {
    double area = 0.0, x = 0.0, y = 0.0, xx = 0.0, xy = 0.0, yy = 0.0;
};
[[nodiscard]] Moments moments(const Polygon& polygon);

}  // namespace toehold::mechanics
