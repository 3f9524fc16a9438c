#include "paper/cutting/plate_contours.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::paper {
namespace {

using drawing::Point;

const double quarter_turn = std::tan(std::numbers::pi / 8.0);
constexpr double half_turn = 1.0;

Point point(const model::Position& at) { return {at.x_in, at.y_in}; }
Point scaled(const Point& at, double scale) { return {scale * at.x, scale * at.y}; }

/// Vertices that lie where the next one lies make no way of their own.
std::vector<dxf::Vertex> without_twins(const std::vector<dxf::Vertex>& vertices) {
    constexpr double same_in = 1e-9;
    std::vector<dxf::Vertex> kept;
    for (std::size_t index = 0; index < vertices.size(); ++index) {
        const Point here = vertices[index].at, next = vertices[(index + 1) % vertices.size()].at;
        if (std::hypot(next.x - here.x, next.y - here.y) > same_in) kept.push_back(vertices[index]);
    }
    return kept;
}

dxf::Entity polyline(std::vector<dxf::Vertex> vertices, double scale, const std::string& layer) {
    vertices = without_twins(vertices);
    for (dxf::Vertex& vertex : vertices) vertex.at = scaled(vertex.at, scale);
    return dxf::ClosedPolyline{layer, std::move(vertices)};
}

/// Where sides and rounded corners meet; without rounding, two of them at every corner.
std::vector<dxf::Vertex> corners(const model::RectangleOutline& of) {
    const double half_width = 0.5 * of.width_in, half_depth = 0.5 * of.depth_in;
    const double radius = std::clamp(of.corner_radius_in, 0.0, std::min(half_width, half_depth));
    const Point low{of.center.x_in - half_width, of.center.y_in - half_depth};
    const Point high{of.center.x_in + half_width, of.center.y_in + half_depth};
    const double turn = radius > 0.0 ? quarter_turn : 0.0;
    return {{{low.x + radius, low.y}},         {{high.x - radius, low.y}, turn}, {{high.x, low.y + radius}},
            {{high.x, high.y - radius}, turn}, {{high.x - radius, high.y}},      {{low.x + radius, high.y}, turn},
            {{low.x, high.y - radius}},        {{low.x, low.y + radius}, turn}};
}

double twice_area(const std::vector<model::Position>& corners) {
    double twice = 0.0;
    for (std::size_t index = 0; index < corners.size(); ++index) {
        const model::Position& one = corners[index];
        const model::Position& next = corners[(index + 1) % corners.size()];
        twice += one.x_in * next.y_in - next.x_in * one.y_in;
    }
    return twice;
}

std::vector<dxf::Vertex> corners(const model::PolygonOutline& of) {
    std::vector<dxf::Vertex> vertices;
    for (const model::Position& corner : of.corners) vertices.push_back({point(corner)});
    if (twice_area(of.corners) < 0.0) std::reverse(vertices.begin(), vertices.end());
    return vertices;
}

std::vector<dxf::Vertex> corners(Point center, const model::Slot& slot) {
    const double angle = slot.angle_deg * std::numbers::pi / 180.0;
    const Point along{std::cos(angle), std::sin(angle)};
    const double half_straight = 0.5 * (slot.length_in - slot.width_in), radius = 0.5 * slot.width_in;
    const auto corner = [&](double forward, double left) {
        return Point{center.x + forward * along.x - left * along.y, center.y + forward * along.y + left * along.x};
    };
    return {{corner(-half_straight, -radius)},
            {corner(half_straight, -radius), half_turn},
            {corner(half_straight, radius)},
            {corner(-half_straight, radius), half_turn}};
}

}  // namespace

dxf::Entity outline_contour(const model::Outline& outline, double scale, const std::string& layer) {
    if (const auto* const circle = std::get_if<model::CircleOutline>(&outline))
        return dxf::Circle{layer, scaled(point(circle->center), scale), 0.5 * scale * circle->diameter_in};
    if (const auto* const rectangle = std::get_if<model::RectangleOutline>(&outline))
        return polyline(corners(*rectangle), scale, layer);
    return polyline(corners(std::get<model::PolygonOutline>(outline)), scale, layer);
}

dxf::Entity hole_contour(const model::Hole& hole, double scale, const std::string& layer) {
    const Point center = point(hole.center);
    if (const auto* const slot = std::get_if<model::Slot>(&hole.shape))
        return polyline(corners(center, *slot), scale, layer);
    return dxf::Circle{layer, scaled(center, scale), 0.5 * scale * std::get<model::RoundHole>(hole.shape).diameter_in};
}

drawing::Box outline_box_in(const model::Outline& outline) {
    const auto around = [](const model::Position& center, double width_in, double depth_in) {
        return drawing::Box{{center.x_in - 0.5 * width_in, center.y_in - 0.5 * depth_in},
                            {center.x_in + 0.5 * width_in, center.y_in + 0.5 * depth_in}};
    };
    if (const auto* const circle = std::get_if<model::CircleOutline>(&outline))
        return around(circle->center, circle->diameter_in, circle->diameter_in);
    if (const auto* const rectangle = std::get_if<model::RectangleOutline>(&outline))
        return around(rectangle->center, rectangle->width_in, rectangle->depth_in);
    const auto& polygon = std::get<model::PolygonOutline>(outline).corners;
    if (polygon.empty()) return {};
    drawing::Box box{point(polygon.front()), point(polygon.front())};
    for (const model::Position& corner : polygon) {
        box.low = {std::min(box.low.x, corner.x_in), std::min(box.low.y, corner.y_in)};
        box.high = {std::max(box.high.x, corner.x_in), std::max(box.high.y, corner.y_in)};
    }
    return box;
}

}  // namespace toehold::paper
