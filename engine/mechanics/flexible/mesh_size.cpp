#include "mechanics/flexible/mesh_size.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::mechanics {
namespace {

// How fast elements may grow with distance from what asks for small ones.
constexpr double growth = 0.35;
constexpr double ring_parts = 16.0;     // elements around the post's foot
constexpr double plate_parts = 9.0;     // elements across a square of the plate's area
constexpr double footprint_part = 1.1;  // element size at an anchor over its footprint's radius

double perimeter(const Polygon& polygon) {
    double length = 0.0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point a = polygon[i], b = polygon[(i + 1) % polygon.size()];
        length += std::hypot(b.x - a.x, b.y - a.y);
    }
    return length;
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

double squared_distance(Point a, Point b) {
    const double x = b.x - a.x, y = b.y - a.y;
    return x * x + y * y;
}

double distance_to_segment(Point point, Point from, Point to) {
    const Point offset = offset_from_segment(point, from, to);
    return std::hypot(offset.x, offset.y);
}

double distance_to_polygon(Point point, const Polygon& polygon) {
    Point nearest;
    double least_squared = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0, next = 1; i < polygon.size(); ++i, ++next) {
        if (next == polygon.size()) next = 0;
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

MeshSize::MeshSize(const Polygon& outline, const Polygon& ring, std::span<const Footprint> footprints, double fineness)
    : ring_(ring), footprints_(footprints), fineness_(fineness) {
    at_ring_ = perimeter(ring) / ring_parts;
    largest_ = std::sqrt(moments(outline).area) / plate_parts;
    at_ring_ = std::min(at_ring_, largest_);
    least_ = at_ring_;
    for (const Footprint& footprint : footprints_) least_ = std::min(least_, footprint_part * footprint.radius);
    least_ = std::max(least_, 0.15 * largest_) / fineness_;
}

double MeshSize::at(Point point) const {
    double size = std::min(largest_, at_ring_ + growth * distance_to_polygon(point, ring_));
    for (const Footprint& footprint : footprints_) {
        const double away = std::hypot(point.x - footprint.center.x, point.y - footprint.center.y) - footprint.radius;
        size = std::min(size, footprint_part * footprint.radius + growth * std::max(0.0, away));
    }
    return std::max(size / fineness_, least_);
}

}  // namespace toehold::mechanics
