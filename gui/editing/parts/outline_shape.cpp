#include "editing/parts/outline_shape.h"

#include "editing/parts/anchor_places.h"
#include "editing/parts/measures.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::editing {
namespace {

using model::Position;

constexpr double smallest_side_in = 0.25;
constexpr double smallest_area_in2 = smallest_side_in * smallest_side_in;
constexpr int corners_of_a_circle = 24;

std::vector<Position> corners_of(const model::RectangleOutline& rectangle) {
    const double half_x = 0.5 * rectangle.width_in, half_y = 0.5 * rectangle.depth_in;
    const Position at = rectangle.center;
    return {{at.x_in - half_x, at.y_in - half_y},
            {at.x_in + half_x, at.y_in - half_y},
            {at.x_in + half_x, at.y_in + half_y},
            {at.x_in - half_x, at.y_in + half_y}};
}
std::vector<Position> corners_of(const model::CircleOutline& /*none*/) { return {}; }
std::vector<Position> corners_of(const model::PolygonOutline& polygon) { return polygon.corners; }

Extent extent_of_corners(const std::vector<Position>& corners) {
    if (corners.empty()) return {};
    Extent extent{point(corners.front()), point(corners.front())};
    for (const Position corner : corners) {
        extent.low = {std::min(extent.low.x, corner.x_in), std::min(extent.low.y, corner.y_in)};
        extent.high = {std::max(extent.high.x, corner.x_in), std::max(extent.high.y, corner.y_in)};
    }
    return extent;
}

/// The rectangle between a fixed corner and one that is drawn away from it toward where it was.
model::RectangleOutline rectangle_between(const model::RectangleOutline& before, Position fixed, Position was,
                                          Position to) {
    const auto kept_apart = [](double fixed_in, double was_in, double to_in) {
        const double sign = was_in >= fixed_in ? 1.0 : -1.0;
        return fixed_in + sign * at_least(sign * (to_in - fixed_in), smallest_side_in);
    };
    const Position moved{kept_apart(fixed.x_in, was.x_in, to.x_in), kept_apart(fixed.y_in, was.y_in, to.y_in)};
    model::RectangleOutline after = before;
    after.width_in = std::abs(moved.x_in - fixed.x_in);
    after.depth_in = std::abs(moved.y_in - fixed.y_in);
    after.center = {0.5 * (moved.x_in + fixed.x_in), 0.5 * (moved.y_in + fixed.y_in)};
    after.corner_radius_in = std::min(before.corner_radius_in, 0.5 * std::min(after.width_in, after.depth_in));
    return after;
}

/// The area changes in proportion to how far corners that move alike have come, so where it would vanish is known.
model::PolygonOutline with_area(const model::PolygonOutline& before, const model::PolygonOutline& after) {
    const double area_before = signed_area(before.corners), area_after = signed_area(after.corners);
    if (std::abs(area_after) >= smallest_area_in2) return after;
    const double stop = std::copysign(smallest_area_in2, area_before);
    if (std::abs(area_before) <= smallest_area_in2) return before;
    const double part = (stop - area_before) / (area_after - area_before);
    model::PolygonOutline stopped = before;
    for (std::size_t index = 0; index < stopped.corners.size(); ++index) {
        stopped.corners[index].x_in += part * (after.corners[index].x_in - before.corners[index].x_in);
        stopped.corners[index].y_in += part * (after.corners[index].y_in - before.corners[index].y_in);
    }
    return stopped;
}

}  // namespace

Extent extent_of(const model::Outline& outline) {
    if (const auto* circle = std::get_if<model::CircleOutline>(&outline)) {
        const double radius = 0.5 * circle->diameter_in;
        return {{circle->center.x_in - radius, circle->center.y_in - radius},
                {circle->center.x_in + radius, circle->center.y_in + radius}};
    }
    return extent_of_corners(corners(outline));
}

std::vector<Position> corners(const model::Outline& outline) {
    return std::visit([](const auto& shape) { return corners_of(shape); }, outline);
}

std::optional<std::size_t> corner_index(const model::Outline& outline, const model::PartId& part) {
    const std::size_t count = part.kind == model::PartKind::corner ? corners(outline).size() : 0;
    for (std::size_t index = 0; index < count; ++index) {
        if (part == model::corner_part(index)) return index;
    }
    return std::nullopt;
}

std::optional<std::size_t> corner_of(const model::BaseDetail& detail, const model::PartId& part) {
    const model::Plate* const plate = shaped_plate(detail);
    return plate == nullptr ? std::nullopt : corner_index(plate->outline, part);
}

model::Outline with_corner_at(const model::Outline& outline, std::size_t corner, Position to) {
    const std::vector<Position> before = corners(outline);
    if (corner >= before.size()) return outline;
    to = bounded(to);
    if (const auto* rectangle = std::get_if<model::RectangleOutline>(&outline))
        return rectangle_between(*rectangle, before[(corner + 2) % 4], before[corner], to);
    const auto& polygon = std::get<model::PolygonOutline>(outline);
    model::PolygonOutline after = polygon;
    after.corners[corner] = to;
    return with_area(polygon, after);
}

drawing::Point normal_of_side(const model::Outline& outline, std::size_t side) {
    const std::vector<Position> all = corners(outline);
    const Position from = all[side % all.size()], to = all[(side + 1) % all.size()];
    const double length = std::hypot(to.x_in - from.x_in, to.y_in - from.y_in);
    if (!(length > 0.0)) return {0.0, 1.0};
    return {(to.y_in - from.y_in) / length, -(to.x_in - from.x_in) / length};
}

model::Outline with_side_moved(const model::Outline& outline, std::size_t side, double along_normal_in) {
    const std::vector<Position> before = corners(outline);
    if (side >= before.size()) return outline;
    const drawing::Point normal = normal_of_side(outline, side);
    const auto moved = [&](Position at) {
        return bounded(Position{at.x_in + normal.x * along_normal_in, at.y_in + normal.y * along_normal_in});
    };
    const std::size_t next = (side + 1) % before.size();
    if (std::holds_alternative<model::RectangleOutline>(outline))
        return with_corner_at(outline, next, moved(before[next]));
    const auto& polygon = std::get<model::PolygonOutline>(outline);
    model::PolygonOutline after = polygon;
    after.corners[side] = moved(before[side]);
    after.corners[next] = moved(before[next]);
    return with_area(polygon, after);
}

model::PolygonOutline as_polygon(const model::Outline& outline) {
    const auto* circle = std::get_if<model::CircleOutline>(&outline);
    if (circle == nullptr) return {corners(outline)};
    model::PolygonOutline polygon;
    for (int index = 0; index < corners_of_a_circle; ++index) {
        const double angle = 2.0 * std::numbers::pi * index / corners_of_a_circle;
        polygon.corners.push_back({circle->center.x_in + 0.5 * circle->diameter_in * std::cos(angle),
                                   circle->center.y_in + 0.5 * circle->diameter_in * std::sin(angle)});
    }
    return polygon;
}

}  // namespace toehold::editing
