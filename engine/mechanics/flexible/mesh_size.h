#pragma once
// How large an element may be at a point of a plate.
#include "mechanics/flexible/plate_mesh.h"

namespace toehold::mechanics {

[[nodiscard]] double squared_distance(Point a, Point b);
[[nodiscard]] double distance_to_segment(Point point, Point from, Point to);
[[nodiscard]] double distance_to_polygon(Point point, const Polygon& polygon);
[[nodiscard]] bool inside_polygon(Point point, const Polygon& polygon);

class MeshSize {
  public:
    MeshSize(const Polygon& outline, const Polygon& ring, std::span<const Footprint> footprints, double fineness);
    [[nodiscard]] double at(Point point) const;
    [[nodiscard]] double least() const { return least_; }

  private:
    const Polygon& ring_;
    std::span<const Footprint> footprints_;
    double fineness_;
    double at_ring_ = 0.0;
    double largest_ = 0.0;
    double least_ = 0.0;
};

}  // namespace toehold::mechanics
