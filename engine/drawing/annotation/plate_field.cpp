#include "drawing/annotation/plate_field.h"

#include "demand/demand.h"
#include "drawing/drawings.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/profile.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace toehold::drawing {
namespace {

std::size_t at(int index) { return static_cast<std::size_t>(index); }

/// Where the level is met between two nodes.
std::optional<Place> met(const Shading& shading, int one, int other, double level) {
    const double from = shading.level[at(one)], to = shading.level[at(other)];
    if ((from > level) == (to > level)) return std::nullopt;
    const double share = (level - from) / (to - from);
    const Point a = shading.nodes[at(one)], b = shading.nodes[at(other)];
    return standing({a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)});
}

/// Whether the triangle's indices are nodes of the field.
bool has_nodes(const demand::DeflectedShape& field, const std::array<int, 3>& triangle) {
    return std::all_of(triangle.begin(), triangle.end(),
                       [&](int index) { return index >= 0 && at(index) < field.nodes.size(); });
}

}  // namespace

double largest_psi(const demand::DeflectedShape& field) {
    double largest = 0.0;
    for (const demand::DeflectedShape::Node& node : field.nodes) largest = std::max(largest, node.pressure_psi);
    return largest;
}

std::optional<Shading> pressure_shading(const demand::DeflectedShape& field) {
    const double largest = largest_psi(field);
    if (!(largest > 0.0) || !std::isfinite(largest)) return std::nullopt;
    Shading shading;
    for (const demand::DeflectedShape::Node& node : field.nodes) {
        shading.nodes.push_back({node.at.x_in, node.at.y_in});
        shading.level.push_back(std::clamp(node.pressure_psi / largest, 0.0, 1.0));
    }
    for (const std::array<int, 3>& triangle : field.triangles) {
        if (has_nodes(field, triangle)) shading.triangles.push_back(triangle);
    }
    return shading;
}

Path level_line(const Shading& shading, double level, Pen pen) {
    Path path{{}, false, pen, Fill::none, {}};
    for (const std::array<int, 3>& triangle : shading.triangles) {
        std::vector<Place> ends;
        for (std::size_t side = 0; side < 3; ++side) {
            if (const auto place = met(shading, triangle[side], triangle[(side + 1) % 3], level))
                ends.push_back(*place);
        }
        if (ends.size() == 2) path.contours.push_back(std::move(ends));
    }
    return path;
}

namespace {

std::optional<CutEnd> crossing(const demand::DeflectedShape::Node& one, const demand::DeflectedShape::Node& other,
                               const SectionPlane& plane) {
    const double from = aside_in(plane, one.at), to = aside_in(plane, other.at);
    if ((from > plane.at_in) == (to > plane.at_in)) return std::nullopt;
    const double share = (plane.at_in - from) / (to - from);
    const auto between = [share](double a, double b) { return a + share * (b - a); };
    return CutEnd{between(along_in(plane, one.at), along_in(plane, other.at)), between(one.lift_in, other.lift_in),
                  between(one.pressure_psi, other.pressure_psi)};
}

}  // namespace

std::vector<std::array<CutEnd, 2>> field_cut(const demand::DeflectedShape& field, const SectionPlane& plane) {
    std::vector<std::array<CutEnd, 2>> pieces;
    const auto node = [&](int index) -> const demand::DeflectedShape::Node& {
        return field.nodes[static_cast<std::size_t>(index)];
    };
    for (const std::array<int, 3>& triangle : field.triangles) {
        if (!has_nodes(field, triangle)) continue;
        std::vector<CutEnd> ends;
        for (std::size_t side = 0; side < 3; ++side) {
            if (const auto end = crossing(node(triangle[side]), node(triangle[(side + 1) % 3]), plane))
                ends.push_back(*end);
        }
        if (ends.size() != 2) continue;
        if (ends[0].along_in > ends[1].along_in) std::swap(ends[0], ends[1]);
        pieces.push_back({ends[0], ends[1]});
    }
    return pieces;
}

double exaggeration(const demand::DeflectedShape& field) {
    constexpr double share_of_width = 0.1;
    double largest_in = 0.0;
    std::vector<Point> places;
    for (const demand::DeflectedShape::Node& node : field.nodes) {
        largest_in = std::max(largest_in, std::abs(node.lift_in));
        places.push_back({node.at.x_in, node.at.y_in});
    }
    const Box box = around(places);
    const double wanted = share_of_width * std::max(width(box), height(box)) / largest_in;
    if (!(wanted > 0.0) || !std::isfinite(wanted)) return 1.0;
    // A round factor, so that a reader can divide by it: 1, 2 or 5 and noughts, the nearest below.
    const double power = std::pow(10.0, std::floor(std::log10(wanted)));
    const double digit = wanted / power;
    return power * (digit >= 5.0 ? 5.0 : digit >= 2.0 ? 2.0 : 1.0);
}

}  // namespace toehold::drawing
