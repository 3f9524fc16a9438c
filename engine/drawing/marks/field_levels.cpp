#include "drawing/marks/field_levels.h"

#include "drawing/marks/shapes.h"

#include <algorithm>
#include <cmath>

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

}  // namespace

double largest_psi(const demand::DeflectedShape& field) {
    double largest = 0.0;
    for (const demand::DeflectedShape::Node& node : field.nodes) largest = std::max(largest, node.pressure_psi);
    return largest;
}

bool has_nodes(const demand::DeflectedShape& field, const std::array<int, 3>& triangle) {
    return std::all_of(triangle.begin(), triangle.end(),
                       [&](int index) { return index >= 0 && at(index) < field.nodes.size(); });
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

}  // namespace toehold::drawing
