#pragma once
// A linear function over the plan: how far a rigid plate stands off its bed at every point.
#include "mechanics/geometry.h"

namespace toehold::mechanics {

struct Plane {
    double at_origin = 0.0;
    double slope_x = 0.0;
    double slope_y = 0.0;

    [[nodiscard]] double at(Point point) const { return at_origin + slope_x * point.x + slope_y * point.y; }
};

/// Where the straight line between two points of opposite sign meets zero.
[[nodiscard]] inline Point crossing(Point from, double value_from, Point to, double value_to) {
    const double share = value_from / (value_from - value_to);
    return {from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)};
}

}  // namespace toehold::mechanics
