#pragma once
// A horizontal force on a group of equal anchors: direct share and the twist from its eccentricity (elastic method).
#include "mechanics/geometry.h"

#include <span>
#include <vector>

namespace toehold::mechanics {

/// `force` acts at the origin. Returns the horizontal force each anchor puts on the plate's load, in lb: the vector sum
/// is `force`, and the moment about any point is that of `force`. Friction carries nothing. One anchor with an
/// eccentric force cannot balance it: the direct share only is returned and `balanced` is false.
struct ShearShares {
    std::vector<Point> force_lb;
    bool balanced = true;
    double twist_lb_in = 0.0;  ///< moment of the force about the anchors' centroid
};
[[nodiscard]] ShearShares share_shear(std::span<const Point> anchors, Point force_lb);

}  // namespace toehold::mechanics
