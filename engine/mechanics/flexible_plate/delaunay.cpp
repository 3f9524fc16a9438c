#include "mechanics/flexible_plate/delaunay.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <utility>

namespace toehold::mechanics {
namespace {

struct Circle {
    Point center;
    double radius_squared = 0.0;
};

struct Cell {
    Triangle corners{};
    Circle circle;
};

double squared(double value) { return value * value; }

Circle circumcircle(Point a, Point b, Point c) {
    const double bx = b.x - a.x, by = b.y - a.y, cx = c.x - a.x, cy = c.y - a.y;
    const double twice_cross = 2.0 * (bx * cy - by * cx);
    const double b_squared = bx * bx + by * by, c_squared = cx * cx + cy * cy;
    const double x = (cy * b_squared - by * c_squared) / twice_cross;
    const double y = (bx * c_squared - cx * b_squared) / twice_cross;
    return {{a.x + x, a.y + y}, x * x + y * y};
}

/// A number in -1 .. 1 that looks random but is always the same for the same index.
double scatter(std::uint32_t index) {
    std::uint32_t hash = index * 2654435761U;
    hash ^= hash >> 15U;
    hash *= 2246822519U;
    hash ^= hash >> 13U;
    return static_cast<double>(hash) / 2147483648.0 - 1.0;
}

struct Box {
    Point center;
    double size = 0.0;
};

Box bounding_box(std::span<const Point> points) {
    Point low = points[0], high = points[0];
    for (const Point point : points) {
        low = {std::min(low.x, point.x), std::min(low.y, point.y)};
        high = {std::max(high.x, point.x), std::max(high.y, point.y)};
    }
    return {{0.5 * (low.x + high.x), 0.5 * (low.y + high.y)}, std::max({high.x - low.x, high.y - low.y, 1e-300})};
}

class Insertion {
  public:
    explicit Insertion(std::span<const Point> points) : count_(static_cast<int>(points.size())) {
        const Box box = bounding_box(points);
        const double shift = 1e-9 * box.size;
        points_.reserve(points.size() + 3);
        for (std::uint32_t index = 0; index < points.size(); ++index) {
            points_.push_back(
                {points[index].x + shift * scatter(2 * index), points[index].y + shift * scatter(2 * index + 1)});
        }
        const double far = 1e3 * box.size;
        points_.push_back({box.center.x - far, box.center.y - far});
        points_.push_back({box.center.x + far, box.center.y - far});
        points_.push_back({box.center.x, box.center.y + far});
        add({count_, count_ + 1, count_ + 2});
    }

    /// From left to right, so that a circle once passed needs no further look.
    std::vector<Triangle> run() {
        std::vector<int> order(static_cast<std::size_t>(count_));
        std::iota(order.begin(), order.end(), 0);
        std::sort(order.begin(), order.end(), [&](int a, int b) { return at(a).x < at(b).x; });
        for (const int index : order) insert(index);
        for (const Cell& cell : cells_) finish(cell.corners);
        return std::move(triangles_);
    }

  private:
    /// Both ends in one number, since the hole's sides are compared more often than anything else.
    using Side = std::uint64_t;
    static Side side_of(int from, int to) { return static_cast<Side>(from) << 32U | static_cast<Side>(to); }
    static int from(Side side) { return static_cast<int>(side >> 32U); }
    static int to(Side side) { return static_cast<int>(side & 0xffffffffU); }

    void add(const Triangle& corners) {
        cells_.push_back({corners, circumcircle(at(corners[0]), at(corners[1]), at(corners[2]))});
    }

    /// No later point lies in the circle.
    void finish(const Triangle& corners) {
        if (std::all_of(corners.begin(), corners.end(), [&](int corner) { return corner < count_; }))
            triangles_.push_back(corners);
    }

    void insert(int index) {
        const Point point = at(index);
        hole_.clear();
        std::size_t kept = 0;
        for (std::size_t cell = 0; cell < cells_.size(); ++cell) {
            const Circle& circle = cells_[cell].circle;
            const double right = point.x - circle.center.x, right_squared = squared(right);
            if (right_squared + squared(point.y - circle.center.y) < circle.radius_squared) {
                open(cells_[cell].corners);
            } else if (right > 0.0 && right_squared >= circle.radius_squared) {
                finish(cells_[cell].corners);
            } else {
                if (kept != cell) cells_[kept] = cells_[cell];
                ++kept;
            }
        }
        cells_.resize(kept);
        for (const Side side : hole_) add({from(side), to(side), index});
    }

    /// Sides of removed triangles that are not shared by two of them bound the hole.
    void open(const Triangle& corners) {
        for (std::size_t side = 0; side < 3; ++side) {
            const int here = corners[side], next = corners[(side + 1) % 3];
            const auto other = std::find(hole_.begin(), hole_.end(), side_of(next, here));
            if (other != hole_.end()) {
                hole_.erase(other);
            } else {
                hole_.push_back(side_of(here, next));
            }
        }
    }

    [[nodiscard]] Point at(int index) const { return points_[static_cast<std::size_t>(index)]; }

    int count_;
    std::vector<Point> points_;
    std::vector<Cell> cells_;  ///< whose circles a later point may still lie in
    std::vector<Triangle> triangles_;
    std::vector<Side> hole_;
};

bool is_flat(std::span<const Point> points, const Triangle& triangle) {
    const Point a = points[static_cast<std::size_t>(triangle[0])];
    const Point b = points[static_cast<std::size_t>(triangle[1])];
    const Point c = points[static_cast<std::size_t>(triangle[2])];
    const double twice_area = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    const double longest_squared =
        std::max({squared(b.x - a.x) + squared(b.y - a.y), squared(c.x - b.x) + squared(c.y - b.y),
                  squared(a.x - c.x) + squared(a.y - c.y)});
    return twice_area < 1e-6 * longest_squared;
}

}  // namespace

std::vector<Triangle> delaunay(std::span<const Point> points) {
    if (points.size() < 3) return {};
    std::vector<Triangle> triangles = Insertion(points).run();
    triangles.erase(std::remove_if(triangles.begin(), triangles.end(),
                                   [&](const Triangle& triangle) { return is_flat(points, triangle); }),
                    triangles.end());
    return triangles;
}

}  // namespace toehold::mechanics
