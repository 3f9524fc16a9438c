#include "mechanics/plate_limit/triangle_finder.h"

#include <algorithm>
#include <array>
#include <limits>

namespace toehold::mechanics {
namespace {

struct Box {
    Point low, high;
};

Box box_of(const EquilibriumTriangle& triangle) {
    const auto& [a, b, c] = triangle.corners;
    return {{std::min({a.x, b.x, c.x}), std::min({a.y, b.y, c.y})},
            {std::max({a.x, b.x, c.x}), std::max({a.y, b.y, c.y})}};
}

/// The least share of a corner: below 0 off the triangle.
double inside(const EquilibriumTriangle& triangle, Point point) {
    const std::array<double, 3> share = area_shares(triangle, point);
    return std::min({share[0], share[1], share[2]});
}

/// Of `count` cells in a row, the one this far from the first's beginning, or the nearest.
std::size_t number(double from_low, double side, std::size_t count) {
    if (!(side > 0.0) || !(from_low > 0.0)) return 0;
    return static_cast<std::size_t>(std::min(from_low / side, static_cast<double>(count - 1)));
}

}  // namespace

TriangleFinder::TriangleFinder(std::span<const EquilibriumTriangle> triangles) : within_(cells_ * cells_) {
    if (triangles.empty()) return;
    Box all = box_of(triangles.front());
    for (const EquilibriumTriangle& triangle : triangles) {
        const Box box = box_of(triangle);
        all = {{std::min(all.low.x, box.low.x), std::min(all.low.y, box.low.y)},
               {std::max(all.high.x, box.high.x), std::max(all.high.y, box.high.y)}};
    }
    low_ = all.low;
    constexpr auto each_way = static_cast<double>(cells_);
    cell_ = {(all.high.x - low_.x) / each_way, (all.high.y - low_.y) / each_way};
    for (std::size_t at = 0; at < triangles.size(); ++at) {
        const Box box = box_of(triangles[at]);
        const std::size_t first = cell(box.low), last = cell(box.high);
        for (std::size_t row = first / cells_; row <= last / cells_; ++row) {
            for (std::size_t column = first % cells_; column <= last % cells_; ++column)
                within_[row * cells_ + column].push_back(at);
        }
    }
}

std::size_t TriangleFinder::cell(Point point) const {
    return number(point.y - low_.y, cell_.y, cells_) * cells_ + number(point.x - low_.x, cell_.x, cells_);
}

std::size_t TriangleFinder::at(std::span<const EquilibriumTriangle> triangles, Point point) const {
    for (const std::size_t near : within_[cell(point)]) {
        if (inside(triangles[near], point) > 0.0) return near;
    }
    // On a side, or off the mesh.
    std::size_t best = 0;
    double most = -std::numeric_limits<double>::infinity();
    for (std::size_t at = 0; at < triangles.size(); ++at) {
        const double share = inside(triangles[at], point);
        if (share <= most) continue;
        most = share;
        best = at;
    }
    return best;
}

}  // namespace toehold::mechanics
