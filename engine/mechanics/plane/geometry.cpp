#include "mechanics/plane/geometry.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::mechanics {
namespace {

/// To the upright rectangle about a segment: no more than to the segment itself.
double squared_distance_to_box(Point point, Point from, Point to) {
    const double x = std::max({std::min(from.x, to.x) - point.x, point.x - std::max(from.x, to.x), 0.0});
    const double y = std::max({std::min(from.y, to.y) - point.y, point.y - std::max(from.y, to.y), 0.0});
    return x * x + y * y;
}

/// From the nearest point of a segment to another point.
Point offset_from_segment(Point point, Point from, Point to) {
    const double dx = to.x - from.x, dy = to.y - from.y;
    const double length_squared = dx * dx + dy * dy;
    const double along =
        length_squared > 0.0
            ? std::clamp(((point.x - from.x) * dx + (point.y - from.y) * dy) / length_squared, 0.0, 1.0)
            : 0.0;
    return {point.x - from.x - along * dx, point.y - from.y - along * dy};
}

}  // namespace

// One pass of the clipping of Sutherland and Hodgman (Communications of the ACM 17, 1974).
Polygon clip_half_plane(const Polygon& polygon, double a, double b, double c) {
    const LinearField outside{a, b, c};
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

double distance_to_segment(Point point, Point from, Point to) {
    const Point offset = offset_from_segment(point, from, to);
    return std::hypot(offset.x, offset.y);
}

double distance_to_polygon(Point point, const Polygon& polygon) {
    constexpr double rounding = 1.0 + 1e-9;
    Point nearest;
    double least_squared = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0, next = 1; i < polygon.size(); ++i, ++next) {
        if (next == polygon.size()) next = 0;
        if (squared_distance_to_box(point, polygon[i], polygon[next]) > rounding * least_squared) continue;
        const Point offset = offset_from_segment(point, polygon[i], polygon[next]);
        const double squared = squared_distance({}, offset);
        if (squared >= least_squared) continue;
        least_squared = squared;
        nearest = offset;
    }
    return std::hypot(nearest.x, nearest.y);
}

bool inside_polygon(Point point, const Polygon& polygon) {
    bool inside = false;
    for (std::size_t i = 0, next = 1; i < polygon.size(); ++i, ++next) {
        if (next == polygon.size()) next = 0;
        const Point a = polygon[i], b = polygon[next];
        if ((a.y > point.y) == (b.y > point.y)) continue;
        if (point.x < a.x + (point.y - a.y) / (b.y - a.y) * (b.x - a.x)) inside = !inside;
    }
    return inside;
}

}  // namespace toehold::mechanics
