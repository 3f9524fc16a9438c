#pragma once
// The hand calculations of a group of anchors, as a reviewer does them on paper: tension from a moment over a lever
// arm, and shear shared by the elastic method. Plain arrays; in, lb, rad; places in plan about the post's axis.
#include "mechanics/plane/geometry.h"

#include <span>
#include <vector>

namespace toehold::mechanics {

enum class LeverArm {
    to_edge,    ///< from the heel anchors to the plate's toe edge
    to_anchor,  ///< from the heel anchors to the toe anchors (the older habit)
};

/// Tension by the lever arm: the moment shared equally by the anchors on the heel side.
struct HandTension {
    double lever_arm_in = 0.0;       ///< of the heel row, its mean, so that the row's tensions add up to the moment
    std::vector<double> tension_lb;  ///< for every anchor; 0 off the heel row
    int heel_anchors = 0;
};

/// `direction_rad`: of the push, from +x counter-clockwise. The heel row is every anchor whose distance behind the
/// furthest-forward support lies within 1 % of the largest. A lever arm that is not positive gives no tensions and 0.
[[nodiscard]] HandTension hand_tension(std::span<const Point> anchors, const Polygon& outline, double moment_lb_in,
                                       double direction_rad, LeverArm arm);

/// Direct share and the twist from the eccentricity (elastic method, common practice). `force` acts at the origin.
/// Returns the horizontal force each anchor puts on the plate's load, in lb: the vector sum
/// is `force`, and the moment about any point is that of `force`. Friction carries nothing. One anchor with an
/// eccentric force cannot balance it: the direct share only is returned and `balanced` is false.
struct ShearShares {
    std::vector<Point> force_lb;
    bool balanced = true;
    double twist_lb_in = 0.0;  ///< moment of the force about the anchors' centroid
};
[[nodiscard]] ShearShares share_shear(std::span<const Point> anchors, Point force_lb);

}  // namespace toehold::mechanics
