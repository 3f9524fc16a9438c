#include "mechanics/flexible_plate/nearest_points.h"

#include <algorithm>
#include <iterator>
#include <limits>
#include <numeric>

namespace toehold::mechanics {
namespace {

/// In order of x, searched from where a point would stand among them outward.
class Nearest {
  public:
    explicit Nearest(const std::vector<BedPoint>& points) : points_(points), in_order_(points.size()) {
        std::iota(in_order_.begin(), in_order_.end(), std::size_t{0});
        std::sort(in_order_.begin(), in_order_.end(),
                  [&points](std::size_t a, std::size_t b) { return points[a].at.x < points[b].at.x; });
    }

    /// On the same rectangle of the bed; absent: it has none.
    [[nodiscard]] std::optional<std::size_t> to(const BedPoint& wanted) const {
        const auto place = std::lower_bound(in_order_.begin(), in_order_.end(), wanted.at.x,
                                            [&](std::size_t i, double x) { return points_[i].at.x < x; });
        std::optional<std::size_t> nearest;
        double least = std::numeric_limits<double>::infinity();
        // False: this one and all beyond it are too far.
        const auto look = [&](std::size_t index) {
            const double x = points_[index].at.x - wanted.at.x, y = points_[index].at.y - wanted.at.y;
            if (x * x >= least) return false;
            if (points_[index].rectangle == wanted.rectangle && x * x + y * y < least) {
                least = x * x + y * y;
                nearest = index;
            }
            return true;
        };
        auto right = place, left = place;
        while (right != in_order_.end() && look(*right)) ++right;
        while (left != in_order_.begin() && look(*std::prev(left))) --left;
        return nearest;
    }

  private:
    const std::vector<BedPoint>& points_;
    std::vector<std::size_t> in_order_;
};

}  // namespace

std::vector<std::optional<std::size_t>> nearest_points(const std::vector<BedPoint>& points,
                                                       const std::vector<BedPoint>& others) {
    const Nearest nearest(others);
    std::vector<std::optional<std::size_t>> found;
    found.reserve(points.size());
    for (const BedPoint& point : points) found.push_back(nearest.to(point));
    return found;
}

}  // namespace toehold::mechanics
