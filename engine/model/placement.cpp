#include "model/placement.h"

#include "model/segment.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <limits>
#include <numbers>

namespace toehold::model {
namespace {

constexpr int sides_of_a_circle = 720;
constexpr double full_turn = 2.0 * std::numbers::pi;

/// Places on the circle of radius 1 about the origin, so many sides on from an angle.
std::vector<Position> on_unit_circle(double from_rad, int sides) {
    std::vector<Position> places;
    for (int index = 0; index <= sides; ++index) {
        const double angle = from_rad + full_turn * index / sides_of_a_circle;
        places.push_back({std::cos(angle), std::sin(angle)});
    }
    return places;
}

/// A quarter on from each of the four axes; the same for every plate, and asked for all the time.
const std::array<std::vector<Position>, 4>& quarter_circles() {
    static const std::array<std::vector<Position>, 4> quarters = [] {
        std::array<std::vector<Position>, 4> all;
        for (std::size_t quarter = 0; quarter < all.size(); ++quarter)
            all[quarter] = on_unit_circle(0.25 * full_turn * static_cast<double>(quarter), sides_of_a_circle / 4);
        return all;
    }();
    return quarters;
}

const std::vector<Position>& whole_circle() {
    static const std::vector<Position> circle = on_unit_circle(0.0, sides_of_a_circle - 1);
    return circle;
}

void add_arc(std::vector<Position>& corners, Position center, double radius_in, const std::vector<Position>& on_unit,
             std::size_t count) {
    for (std::size_t at = 0; at < count; ++at) {
        const Position place = on_unit[at];
        corners.push_back({center.x_in + radius_in * place.x_in, center.y_in + radius_in * place.y_in});
    }
}

std::vector<Position> corners_of(const RectangleOutline& rectangle) {
    const double half_width = 0.5 * rectangle.width_in;
    const double half_depth = 0.5 * rectangle.depth_in;
    const double radius = rectangle.corner_radius_in;
    const Position center = rectangle.center;
    const std::size_t of_each = radius > 0.0 ? sides_of_a_circle / 4 + 1 : 1;
    std::vector<Position> corners;
    corners.reserve(4 * of_each);
    const double sign_x[] = {1.0, -1.0, -1.0, 1.0};
    const double sign_y[] = {1.0, 1.0, -1.0, -1.0};
    for (std::size_t corner = 0; corner < 4; ++corner) {
        const Position arc_center{center.x_in + sign_x[corner] * (half_width - radius),
                                  center.y_in + sign_y[corner] * (half_depth - radius)};
        add_arc(corners, arc_center, radius, quarter_circles()[corner], of_each);
    }
    return corners;
}

/// Of the polygon that has the circle's area.
double radius_of_equal_area_in(const CircleOutline& circle) {
    const double step = full_turn / sides_of_a_circle;
    return 0.5 * circle.diameter_in * std::sqrt(step / std::sin(step));
}

std::vector<Position> corners_of(const CircleOutline& circle) {
    std::vector<Position> corners;
    corners.reserve(sides_of_a_circle);
    add_arc(corners, circle.center, radius_of_equal_area_in(circle), whole_circle(), sides_of_a_circle);
    return corners;
}

std::vector<Position> corners_of(const PolygonOutline& outline) {
    double twice_area = 0.0;
    for (const Segment& side : sides(outline.corners)) {
        twice_area += side.from.x_in * side.to.y_in - side.to.x_in * side.from.y_in;
    }
    std::vector<Position> corners = outline.corners;
    if (twice_area < 0.0) std::reverse(corners.begin(), corners.end());
    return corners;
}

bool inside(const std::vector<Position>& corners, Position point) {
    bool within = false;
    for (const Segment& side : sides(corners)) {
        if ((side.from.y_in > point.y_in) == (side.to.y_in > point.y_in)) continue;
        const double x_on_side = side.from.x_in + (point.y_in - side.from.y_in) / (side.to.y_in - side.from.y_in) *
                                                      (side.to.x_in - side.from.x_in);
        if (point.x_in < x_on_side) within = !within;
    }
    return within;
}

}  // namespace

PlanAxis other(PlanAxis axis) { return axis == PlanAxis::x ? PlanAxis::y : PlanAxis::x; }

double coordinate_in(Position at, PlanAxis axis) { return axis == PlanAxis::x ? at.x_in : at.y_in; }

double extent_in(const Outline& outline, PlanAxis axis) {
    if (const auto* const rectangle = std::get_if<RectangleOutline>(&outline))
        return axis == PlanAxis::x ? rectangle->width_in : rectangle->depth_in;
    if (const auto* const circle = std::get_if<CircleOutline>(&outline)) return 2.0 * radius_of_equal_area_in(*circle);
    const std::vector<Position> corners = polygon(outline);
    const auto [least, largest] = std::minmax_element(corners.begin(), corners.end(), [axis](Position a, Position b) {
        return coordinate_in(a, axis) < coordinate_in(b, axis);
    });
    return corners.empty() ? 0.0 : coordinate_in(*largest, axis) - coordinate_in(*least, axis);
}

PlanRectangle plan(const Member& member) {
    const double half_width = 0.5 * member.width_in;
    if (member.along == PlanAxis::x) {
        return {member.id, member.from_in, member.to_in, member.across_in - half_width, member.across_in + half_width};
    }
    return {member.id, member.across_in - half_width, member.across_in + half_width, member.from_in, member.to_in};
}

bool contains(const PlanRectangle& rectangle, Position point) {
    return point.x_in >= rectangle.x_min_in && point.x_in <= rectangle.x_max_in && point.y_in >= rectangle.y_min_in &&
           point.y_in <= rectangle.y_max_in;
}

bool overlap(const Member& one, const Member& other) {
    constexpr double touching_in = 1.0 / 64.0;  // finer than lumber is sawn or a file is measured
    const double allowed_in = one.along == other.along ? touching_in : end_fit_in + touching_in;
    const PlanRectangle a = plan(one), b = plan(other);
    return std::min(a.x_max_in, b.x_max_in) - std::max(a.x_min_in, b.x_min_in) > allowed_in &&
           std::min(a.y_max_in, b.y_max_in) - std::max(a.y_min_in, b.y_min_in) > allowed_in;
}

std::optional<Seat> seat(const Framing& framing, Position point) {
    const std::vector<Member> all = members(framing);
    for (std::size_t index = 0; index < all.size(); ++index) {
        const Member& one = all[index];
        if (!contains(plan(one), point)) continue;
        const bool along_x = one.along == PlanAxis::x;
        const double along_in = along_x ? point.x_in : point.y_in;
        const double across_in = (along_x ? point.y_in : point.x_in) - (one.across_in - 0.5 * one.width_in);
        const double in_ply_in = std::fmod(across_in, ply_width_in(one));
        return Seat{index, std::min(in_ply_in, ply_width_in(one) - in_ply_in),
                    std::min(along_in - one.from_in, one.to_in - along_in)};
    }
    return std::nullopt;
}

std::vector<Position> polygon(const Outline& outline) {
    return std::visit([](const auto& shape) { return corners_of(shape); }, outline);
}

double edge_distance_in(const Outline& outline, Position point) {
    const std::vector<Position> corners = polygon(outline);
    double distance = std::numeric_limits<double>::infinity();
    for (const Segment& side : sides(corners)) distance = std::min(distance, distance_in(point, side));
    return inside(corners, point) ? distance : -distance;
}

}  // namespace toehold::model
