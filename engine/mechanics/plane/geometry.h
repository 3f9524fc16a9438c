#pragma once
// LinearField geometry: points, intervals, polygons and linear functions over the plan. Any consistent unit of length.
#include <vector>

namespace toehold::mechanics {

struct Point {
    double x = 0.0;
    double y = 0.0;
    friend bool operator==(const Point&, const Point&) = default;
};

/// Along a line, from the lower end to the upper; one that runs backward is empty.
struct Interval {
    double from = 0.0;
    double to = 0.0;
    [[nodiscard]] double length() const { return to > from ? to - from : 0.0; }
};

using Polygon = std::vector<Point>;  ///< closed, last corner joins the first; counter-clockwise is positive

/// at_origin + slope_x x + slope_y y: how far a rigid plate stands off its bed at every point, or a half plane's edge.
struct LinearField {
    double at_origin = 0.0;
    double slope_x = 0.0;
    double slope_y = 0.0;

    [[nodiscard]] double at(Point point) const { return at_origin + slope_x * point.x + slope_y * point.y; }
};

/// Where the straight line between two points with values of opposite sign meets zero.
[[nodiscard]] inline Point crossing(Point from, double value_from, Point to, double value_to) {
    const double share = value_from / (value_from - value_to);
    return {from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)};
}

/// Keeps the part where a + b x + c y <= 0. Exact for any simple polygon as far as area integrals go
/// (a non-convex polygon may come back with coincident edges, which carry no area).
[[nodiscard]] Polygon clip_half_plane(const Polygon& polygon, double a, double b, double c);
[[nodiscard]] Polygon clip_rectangle(const Polygon& polygon, double x_min, double x_max, double y_min, double y_max);

[[nodiscard]] inline double squared_distance(Point a, Point b) {
    const double x = b.x - a.x, y = b.y - a.y;
    return x * x + y * y;
}
[[nodiscard]] double distance_to_segment(Point point, Point from, Point to);
/// From the polygon's sides, inside and outside alike; infinite for a polygon without corners.
[[nodiscard]] double distance_to_polygon(Point point, const Polygon& polygon);
/// A point on a side may count either way.
[[nodiscard]] bool inside_polygon(Point point, const Polygon& polygon);

}  // namespace toehold::mechanics
