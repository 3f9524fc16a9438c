#include "mechanics/flexible_plate/element_size.h"

#include "mechanics/plane/area_moments.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>
#include <vector>

namespace toehold::mechanics {
namespace {

constexpr double corner_turn = 0.35;  // rad; a sharper turn of the outline is a corner, a smaller one part of a curve
constexpr double curve_turn = 0.6;    // rad; the most a resampled side of a curve turns
// How fast elements may grow with distance from what asks for small ones.
constexpr double growth = 0.35;
constexpr double ring_parts = 16.0;       // elements around the post's foot
constexpr double plate_parts = 9.0;       // elements across a square of the plate's area
constexpr double certainly = 1.0 - 1e-9;  // less than rounding could make of it
constexpr double footprint_part = 1.1;    // element size at an anchor over its footprint's radius

double perimeter(const Polygon& polygon) {
    double length = 0.0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point a = polygon[i], b = polygon[(i + 1) % polygon.size()];
        length += std::hypot(b.x - a.x, b.y - a.y);
    }
    return length;
}

double distance(Point a, Point b) { return std::hypot(b.x - a.x, b.y - a.y); }
Point between(Point a, Point b, double part) { return {a.x + part * (b.x - a.x), a.y + part * (b.y - a.y)}; }

double turn_at(Point before, Point at, Point after) {
    const double ax = at.x - before.x, ay = at.y - before.y, bx = after.x - at.x, by = after.y - at.y;
    return std::atan2(ax * by - ay * bx, ax * bx + ay * by);
}

/// Consecutive corners of a polygon from one sharp corner to the next (or all round, where there is none).
std::vector<Polygon> smooth_stretches(const Polygon& polygon) {
    const std::size_t count = polygon.size();
    if (count == 0) return {};
    std::vector<std::size_t> sharp;
    for (std::size_t i = 0; i < count; ++i) {
        const double turn = turn_at(polygon[(i + count - 1) % count], polygon[i], polygon[(i + 1) % count]);
        if (std::abs(turn) > corner_turn) sharp.push_back(i);
    }
    if (sharp.empty()) sharp.push_back(0);
    std::vector<Polygon> stretches;
    for (std::size_t s = 0; s < sharp.size(); ++s) {
        const std::size_t from = sharp[s];
        std::size_t to = sharp[(s + 1) % sharp.size()];
        if (to <= from) to += count;
        Polygon stretch;
        for (std::size_t i = from; i <= to; ++i) stretch.push_back(polygon[i % count]);
        stretches.push_back(std::move(stretch));
    }
    return stretches;
}

/// Length and turning along a stretch, to divide it evenly in the sense of the element size.
struct Measure {
    std::vector<double> position;  ///< in elements, at each point of the stretch
};

Measure measure(const Polygon& stretch, const ElementSize& size) {
    Measure result{{0.0}};
    for (std::size_t i = 0; i + 1 < stretch.size(); ++i) {
        // A long straight side passes through places of different size: sum over small parts of it.
        constexpr int parts = 16;
        double elements = 0.0;
        const double length = distance(stretch[i], stretch[i + 1]);
        const int steps = stretch.size() > 50 ? 1 : parts;
        for (int part = 0; part < steps; ++part) {
            elements += length / steps / size.at(between(stretch[i], stretch[i + 1], (part + 0.5) / steps));
        }
        const double turn =
            i + 2 < stretch.size() ? std::abs(turn_at(stretch[i], stretch[i + 1], stretch[i + 2])) : 0.0;
        result.position.push_back(result.position.back() + std::max(elements, turn / curve_turn));
    }
    return result;
}

/// Points that divide the stretch, its first point included, its last one not.
Polygon divide(const Polygon& stretch, const ElementSize& size) {
    const Measure along = measure(stretch, size);
    const int parts = std::max(1, static_cast<int>(std::lround(along.position.back())));
    Polygon points;
    std::size_t segment = 0;
    for (int part = 0; part < parts; ++part) {
        const double wanted = along.position.back() * part / parts;
        while (segment + 2 < along.position.size() && along.position[segment + 1] < wanted) ++segment;
        const double width = along.position[segment + 1] - along.position[segment];
        points.push_back(between(stretch[segment], stretch[segment + 1],
                                 width > 0.0 ? (wanted - along.position[segment]) / width : 0.0));
    }
    return points;
}

/// Moves points of curved stretches outward so that the chords enclose what the curve does (h theta / 12 each).
void keep_area(Polygon& points) {
    const Polygon before = points;
    const std::size_t count = points.size();
    for (std::size_t i = 0; i < count; ++i) {
        const Point last = before[(i + count - 1) % count], next = before[(i + 1) % count];
        const double turn = turn_at(last, before[i], next);
        if (std::abs(turn) < 1e-9 || std::abs(turn) > 1.2 * curve_turn) continue;
        const double chord = distance(last, next);
        const double shift = 0.5 * chord * turn / 12.0;
        points[i] = {before[i].x + shift * (next.y - last.y) / chord, before[i].y - shift * (next.x - last.x) / chord};
    }
}

}  // namespace

ElementSize::ElementSize(const Polygon& outline, const Polygon& ring, std::span<const Footprint> footprints,
                         double fineness)
    : ring_(ring), footprints_(footprints), fineness_(fineness) {
    ring_low_ = ring_high_ = ring.front();
    for (const Point corner : ring) {
        ring_low_ = {std::min(ring_low_.x, corner.x), std::min(ring_low_.y, corner.y)};
        ring_high_ = {std::max(ring_high_.x, corner.x), std::max(ring_high_.y, corner.y)};
    }
    at_ring_ = perimeter(ring) / ring_parts;
    largest_ = std::sqrt(moments(outline).area) / plate_parts;
    at_ring_ = std::min(at_ring_, largest_);
    least_ = at_ring_;
    for (const Footprint& footprint : footprints_) least_ = std::min(least_, footprint_part * footprint.radius);
    least_ = std::max(least_, 0.15 * largest_) / fineness_;
}

double ElementSize::at(Point point) const {
    // So far from the ring at least, which mostly tells as much as the distance itself.
    const double at_least =
        std::max({ring_low_.x - point.x, point.x - ring_high_.x, ring_low_.y - point.y, point.y - ring_high_.y, 0.0});
    const bool far = at_ring_ + certainly * growth * at_least >= largest_;
    return at(point, far ? std::numeric_limits<double>::infinity() : distance_to_polygon(point, ring_));
}

double ElementSize::at(Point point, double from_ring) const {
    double size = std::min(largest_, at_ring_ + growth * from_ring);
    for (const Footprint& footprint : footprints_) {
        const double at_least =
            std::max(std::abs(point.x - footprint.center.x), std::abs(point.y - footprint.center.y)) - footprint.radius;
        if (certainly * (footprint_part * footprint.radius + growth * at_least) >= size) continue;
        const double away = std::hypot(point.x - footprint.center.x, point.y - footprint.center.y) - footprint.radius;
        size = std::min(size, footprint_part * footprint.radius + growth * std::max(0.0, away));
    }
    return std::max(size / fineness_, least_);
}

Polygon resample(const Polygon& polygon, const ElementSize& size) {
    Polygon points;
    for (const Polygon& stretch : smooth_stretches(polygon)) {
        for (const Point point : divide(stretch, size)) points.push_back(point);
    }
    keep_area(points);
    return points;
}

}  // namespace toehold::mechanics
