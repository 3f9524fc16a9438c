#include "mechanics/flexible_plate/plate_mesh.h"

#include "mechanics/flexible_plate/element_size.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <set>
#include <stdexcept>
#include <utility>

namespace toehold::mechanics {
namespace {

constexpr double least_apart = 0.72;  // of the element size, between a free node and any other
constexpr int smoothing_rounds = 6;
constexpr int most_splits = 12;

/// Counter-clockwise, and no corner turns the other way.
bool is_convex(const Polygon& polygon) {
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point a = polygon[i], b = polygon[(i + 1) % polygon.size()], c = polygon[(i + 2) % polygon.size()];
        if ((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) < 0.0) return false;
    }
    return true;
}

class Mesher {
  public:
    Mesher(const Polygon& outline, const Polygon& ring, std::span<const Footprint> footprints, double fineness)
        : size_(outline, ring, footprints, fineness) {
        add_loop(resample(outline, size_), outline_sides_);
        boundary_ = Polygon(points_.begin(), points_.end());
        convex_ = is_convex(boundary_);
        const int first_of_ring = static_cast<int>(points_.size());
        add_loop(resample(ring, size_), ring_sides_);
        for (int node = first_of_ring; node < static_cast<int>(points_.size()); ++node) on_ring_.insert(node);
        for (const Footprint& footprint : footprints) {
            if (far_enough(footprint.center, 0.5)) points_.push_back(footprint.center);
        }
        fixed_ = static_cast<int>(points_.size());
        fill(ring);
    }

    PlateMesh build() {
        for (int round = 0; round < smoothing_rounds; ++round) {
            triangulate();
            smooth();
        }
        triangulate();
        for (int split = 0; split < most_splits; ++split) {
            const bool outline_was_cut = split_missing(outline_sides_, false);
            const bool ring_was_cut = split_missing(ring_sides_, true);
            if (!outline_was_cut && !ring_was_cut) break;
            triangulate();
        }
        PlateMesh mesh;
        mesh.nodes = points_;
        mesh.triangles = triangles_;
        mesh.ring.assign(on_ring_.begin(), on_ring_.end());
        return mesh;
    }

  private:
    using Sides = std::vector<std::pair<int, int>>;

    void add_loop(const Polygon& loop, Sides& sides) {
        const int first = static_cast<int>(points_.size());
        const int count = static_cast<int>(loop.size());
        for (int i = 0; i < count; ++i) {
            points_.push_back(loop[static_cast<std::size_t>(i)]);
            sides.emplace_back(first + i, first + (i + 1) % count);
        }
    }

    [[nodiscard]] bool far_enough(Point point, double part) const {
        const double least = part * size_.at(point);
        return std::all_of(points_.begin(), points_.end(),
                           [&](Point other) { return squared_distance(point, other) >= least * least; });
    }

    /// Free nodes from a fine lattice about the post, each kept where it is not too near to one kept before.
    void fill(const Polygon& ring) {
        double reach = 0.0;
        for (const Point corner : boundary_) reach = std::max({reach, std::abs(corner.x), std::abs(corner.y)});
        const double step = 0.75 * size_.least();
        const int count = static_cast<int>(reach / step) + 1;
        std::vector<std::pair<double, Point>> candidates;
        for (int row = -count; row <= count; ++row) {
            for (int column = -count; column <= count; ++column) {
                const Point point{step * (column + (row % 2 == 0 ? 0.0 : 0.5)), step * 0.5 * std::numbers::sqrt3 * row};
                if (!inside_polygon(point, boundary_)) continue;
                candidates.emplace_back(distance_to_polygon(point, ring), point);
            }
        }
        std::stable_sort(candidates.begin(), candidates.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        for (const auto& [away, point] : candidates) {
            if (distance_to_polygon(point, boundary_) >= 0.5 * size_.at(point) && far_enough(point, least_apart))
                points_.push_back(point);
        }
    }

    void triangulate() {
        triangles_ = delaunay(points_);
        if (convex_) return;
        const auto outside = [&](const Triangle& t) {
            const Point a = at(t[0]), b = at(t[1]), c = at(t[2]);
            return !inside_polygon({(a.x + b.x + c.x) / 3.0, (a.y + b.y + c.y) / 3.0}, boundary_);
        };
        triangles_.erase(std::remove_if(triangles_.begin(), triangles_.end(), outside), triangles_.end());
    }

    void smooth() {
        std::vector<Point> sum(points_.size());
        std::vector<double> weight(points_.size(), 0.0);
        std::vector<double> share(points_.size());
        std::transform(points_.begin(), points_.end(), share.begin(),
                       [&](Point point) { return 1.0 / size_.at(point); });
        for (const Triangle& t : triangles_) {
            for (std::size_t i = 0; i < 3; ++i) {
                const auto node = static_cast<std::size_t>(t[i]);
                for (const std::size_t corner : {(i + 1) % 3, (i + 2) % 3}) {
                    const auto other = static_cast<std::size_t>(t[corner]);
                    sum[node].x += share[other] * points_[other].x;
                    sum[node].y += share[other] * points_[other].y;
                    weight[node] += share[other];
                }
            }
        }
        for (auto node = static_cast<std::size_t>(fixed_); node < points_.size(); ++node) {
            if (weight[node] > 0.0) points_[node] = {sum[node].x / weight[node], sum[node].y / weight[node]};
        }
    }

    /// Divides every side of a loop that no triangle has; true when there was one.
    bool split_missing(Sides& sides, bool ring) {
        std::vector<std::pair<int, int>> present;
        present.reserve(3 * triangles_.size());
        for (const Triangle& t : triangles_) {
            for (std::size_t i = 0; i < 3; ++i) present.emplace_back(std::minmax(t[i], t[(i + 1) % 3]));
        }
        std::sort(present.begin(), present.end());
        Sides divided;
        for (const auto& side : sides) {
            const std::pair<int, int> wanted = std::minmax(side.first, side.second);
            if (std::binary_search(present.begin(), present.end(), wanted)) {
                divided.push_back(side);
                continue;
            }
            const int middle = static_cast<int>(points_.size());
            const Point a = at(side.first), b = at(side.second);
            points_.push_back({a.x + 0.5 * (b.x - a.x), a.y + 0.5 * (b.y - a.y)});
            if (ring) on_ring_.insert(middle);
            divided.emplace_back(side.first, middle);
            divided.emplace_back(middle, side.second);
        }
        const bool any = divided.size() != sides.size();
        sides = std::move(divided);
        return any;
    }

    [[nodiscard]] Point at(int node) const { return points_[static_cast<std::size_t>(node)]; }

    ElementSize size_;
    Polygon boundary_;
    bool convex_ = false;  ///< so that no triangle of its points lies outside
    std::vector<Point> points_;
    std::vector<Triangle> triangles_;
    Sides outline_sides_, ring_sides_;
    std::set<int> on_ring_;
    int fixed_ = 0;
};

}  // namespace

PlateMesh mesh_plate(const Polygon& outline, const Polygon& ring, std::span<const Footprint> footprints,
                     double fineness) {
    if (outline.size() < 3 || ring.size() < 3)
        throw std::invalid_argument("an outline and a ring have three corners or more");
    return Mesher(outline, ring, footprints, fineness).build();
}

}  // namespace toehold::mechanics
