#pragma once
// The hand calculation: a push's moment over a lever arm, shared equally by the anchors on the heel side.
#include "mechanics/geometry.h"

#include <span>
#include <vector>

namespace toehold::mechanics {

enum class LeverArm {
    to_edge,    ///< from the heel anchors to the plate's toe edge
    to_anchor,  ///< from the heel anchors to the toe anchors (the older habit)
};

struct HandTension {
    double lever_arm_in = 0.0;       ///< of the heel row, its mean, so that the row's tensions add up to the moment
    std::vector<double> tension_lb;  ///< for every anchor; 0 off the heel row
    int heel_anchors = 0;
};

/// `direction_rad`: of the push, from +x counter-clockwise. The heel row is every anchor whose distance behind the
/// furthest-forward support lies within 1 % of the largest. A lever arm that is not positive gives no tensions and 0.
[[nodiscard]] HandTension hand_tension(std::span<const Point> anchors, const Polygon& outline, double moment_lb_in,
                                       double direction_rad, LeverArm arm);

}  // namespace toehold::mechanics
