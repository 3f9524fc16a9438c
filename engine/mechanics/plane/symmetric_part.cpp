#include "mechanics/plane/symmetric_part.h"

namespace toehold::mechanics {
namespace {

/// Twice the area of the triangle, positive where `c` lies to the left of the way from `a` to `b`.
double turn(Point a, Point b, Point c) { return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x); }

Point opposite(Point point, Point centre) { return {2.0 * centre.x - point.x, 2.0 * centre.y - point.y}; }

/// Keeps what lies to the left of the way from `a` to `b`.
Polygon keep_left(const Polygon& polygon, Point a, Point b) {
    const double x = b.x - a.x, y = b.y - a.y;
    return clip_half_plane(polygon, x * a.y - y * a.x, y, -x);
}

}  // namespace

bool is_convex(const Polygon& polygon) {
    constexpr double straight = 1e-9;
    if (polygon.size() < 3) return false;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point a = polygon[i];
        const Point b = polygon[(i + 1) % polygon.size()];
        const Point c = polygon[(i + 2) % polygon.size()];
        if (turn(a, b, c) < -straight) return false;
    }
    return true;
}

Polygon symmetric_part(const Polygon& convex, Point centre) {
    Polygon part = convex;
    for (std::size_t i = 0; i < convex.size() && !part.empty(); ++i) {
        const Point from = opposite(convex[i], centre);
        const Point to = opposite(convex[(i + 1) % convex.size()], centre);
        part = keep_left(part, from, to);
    }
    return part;
}

}  // namespace toehold::mechanics
