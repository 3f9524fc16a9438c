#pragma once
// How large an element may be at a point of a plate, and outlines divided to that size. Any unit of length.
#include "mechanics/flexible_plate/plate_mesh.h"

namespace toehold::mechanics {

class ElementSize {
  public:
    ElementSize(const Polygon& outline, const Polygon& ring, std::span<const Footprint> footprints, double fineness);
    [[nodiscard]] double at(Point point) const;
    /// The same, so far from the ring.
    [[nodiscard]] double at(Point point, double from_ring) const;
    [[nodiscard]] double least() const { return least_; }

  private:
    const Polygon& ring_;
    std::span<const Footprint> footprints_;
    double fineness_;
    Point ring_low_, ring_high_;
    double at_ring_ = 0.0;
    double largest_ = 0.0;
    double least_ = 0.0;
};

/// The polygon with its sides divided to the element size. Sharp corners stay; a curve of many short chords is given
/// fewer, moved outward so that they enclose the same area.
[[nodiscard]] Polygon resample(const Polygon& polygon, const ElementSize& size);

}  // namespace toehold::mechanics
