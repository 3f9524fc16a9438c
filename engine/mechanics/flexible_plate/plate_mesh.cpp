#include "mechanics/flexible_plate/plate_mesh.h"

#include "mechanics/flexible_plate/element_size.h"

#include <algorithm>
#include <array>
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

/// `inside_polygon` asked of many points: only the sides at a point's height are looked at.
class Inside {
  public:
    explicit Inside(const Polygon& polygon) : low_(polygon.front().y), high_(low_) {
        for (const Point corner : polygon) low_ = std::min(low_, corner.y), high_ = std::max(high_, corner.y);
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const Point a = polygon[i], b = polygon[(i + 1) % polygon.size()];
            const std::size_t last = row(std::max(a.y, b.y));
            for (std::size_t at = row(std::min(a.y, b.y)); at <= last; ++at) sides_[at].emplace_back(a, b);
        }
    }

    [[nodiscard]] bool has(Point point) const {
        if (!(point.y >= low_ && point.y <= high_)) return false;
        bool inside = false;
        for (const auto& [a, b] : sides_[row(point.y)]) {
            if ((a.y > point.y) == (b.y > point.y)) continue;
            if (point.x < a.x + (point.y - a.y) / (b.y - a.y) * (b.x - a.x)) inside = !inside;
        }
        return inside;
    }

  private:
    static constexpr std::size_t rows = 32;
    [[nodiscard]] std::size_t row(double y) const {
        const double part = (y - low_) / (high_ - low_);
        return part > 0.0 ? std::min(rows - 1, static_cast<std::size_t>(part * static_cast<double>(rows))) : 0;
    }

    double low_, high_;
    std::array<std::vector<std::pair<Point, Point>>, rows> sides_;
};

class Mesher {
  public:
    Mesher(const Polygon& outline, const Polygon& ring, std::span<const Footprint> footprints, double fineness)
        : size_(outline, ring, footprints, fineness),
          boundary_(resample(outline, size_)),
          inside_(boundary_),
          convex_(is_convex(boundary_)) {
        add_loop(boundary_, outline_sides_);
        const int first_of_ring = static_cast<int>(points_.size());
        add_loop(resample(ring, size_), ring_sides_);
        for (int node = first_of_ring; node < static_cast<int>(points_.size()); ++node) on_ring_.insert(node);
        for (const Footprint& footprint : footprints) {
            if (far_enough(footprint.center, 0.5 * size_.at(footprint.center))) points_.push_back(footprint.center);
        }
        fixed_ = points_.size();
        for (const Point point : points_) share_.push_back(1.0 / size_.at(point));
        fill(ring);
    }

    PlateMesh build() {
        for (int round = 0; round < smoothing_rounds; ++round) {
            triangulate();
            smooth();
        }
        triangulate();
        for (int split = 0; split < most_splits; ++split) {
            const Sides present = present_sides();
            const bool outline_was_cut = split_missing(outline_sides_, present, false);
            const bool ring_was_cut = split_missing(ring_sides_, present, true);
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

    [[nodiscard]] bool far_enough(Point point, double least) const {
        // The last ones first: what is too near was mostly put there a moment ago.
        return std::all_of(points_.rbegin(), points_.rend(),
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
                if (inside_.has(point)) candidates.emplace_back(distance_to_polygon(point, ring), point);
            }
        }
        std::stable_sort(candidates.begin(), candidates.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        for (const auto& [away, point] : candidates) {
            const double size = size_.at(point, away);
            if (far_enough(point, least_apart * size) && distance_to_polygon(point, boundary_) >= 0.5 * size)
                points_.push_back(point);
        }
    }

    void triangulate() {
        triangles_ = delaunay(points_);
        if (convex_) return;
        const auto outside = [&](const Triangle& t) {
            const Point a = at(t[0]), b = at(t[1]), c = at(t[2]);
            return !inside_.has({(a.x + b.x + c.x) / 3.0, (a.y + b.y + c.y) / 3.0});
        };
        triangles_.erase(std::remove_if(triangles_.begin(), triangles_.end(), outside), triangles_.end());
    }

    void smooth() {
        std::vector<Point> sum(points_.size());
        std::vector<double> weight(points_.size(), 0.0);
        share_.resize(points_.size());
        for (std::size_t node = fixed_; node < points_.size(); ++node) share_[node] = 1.0 / size_.at(points_[node]);
        for (const Triangle& t : triangles_) {
            for (std::size_t i = 0; i < 3; ++i) {
                const auto node = static_cast<std::size_t>(t[i]);
                for (const std::size_t corner : {(i + 1) % 3, (i + 2) % 3}) {
                    const auto other = static_cast<std::size_t>(t[corner]);
                    sum[node].x += share_[other] * points_[other].x;
                    sum[node].y += share_[other] * points_[other].y;
                    weight[node] += share_[other];
                }
            }
        }
        for (std::size_t node = fixed_; node < points_.size(); ++node) {
            if (weight[node] > 0.0) points_[node] = {sum[node].x / weight[node], sum[node].y / weight[node]};
        }
    }

    /// Of all triangles, the lower node first, in order.
    [[nodiscard]] Sides present_sides() const {
        Sides present;
        present.reserve(3 * triangles_.size());
        for (const Triangle& t : triangles_) {
            for (std::size_t i = 0; i < 3; ++i) present.emplace_back(std::minmax(t[i], t[(i + 1) % 3]));
        }
        std::sort(present.begin(), present.end());
        return present;
    }

    /// Divides every side of a loop that is not present; true when there was one.
    bool split_missing(Sides& sides, const Sides& present, bool ring) {
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
    Inside inside_;  ///< the boundary
    bool convex_;    ///< so that no triangle of its points lies outside
    std::vector<Point> points_;
    std::vector<double> share_;  ///< of each point in the place of its neighbors
    std::vector<Triangle> triangles_;
    Sides outline_sides_, ring_sides_;
    std::set<int> on_ring_;
    std::size_t fixed_ = 0;
};

}  // namespace

PlateMesh mesh_plate(const Polygon& outline, const Polygon& ring, std::span<const Footprint> footprints,
                     double fineness) {
    if (outline.size() < 3 || ring.size() < 3)
        throw std::invalid_argument("an outline and a ring have three corners or more");
    return Mesher(outline, ring, footprints, fineness).build();
}

}  // namespace toehold::mechanics
