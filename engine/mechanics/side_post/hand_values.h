#pragma once
// What a reviewer works on paper for a post fastened to the side: the couple over the fasteners, and the fasteners as
// an elastic group under a push along the rail. Statics alone; in, lb.
#include "mechanics/plane/geometry.h"

#include <span>
#include <vector>

namespace toehold::mechanics {

/// Tension of the upper fasteners under a push away from the member:
///   T = P (h + d) / arm,   C = T - P
/// with h the push above the top of the member, d the place the post turns about below that top, arm the upper
/// fasteners above that place. The place is the lowest edge that bears, which is the longest arm and the least tension
/// there can be, or the lower fastener, by older habit. Common practice.
struct HandCouple {
    double tension_lb = 0.0;  ///< of all upper fasteners together
    double bearing_lb = 0.0;  ///< on the member at the place turned about
    double arm_in = 0.0;
};
/// `turns_about_in`: d, > `fastener_below_in`; `fastener_below_in`: of the upper fasteners below the member's top, may
/// be below 0 for one above it. Throws std::invalid_argument when the arm is not above 0.
[[nodiscard]] HandCouple hand_couple(double push_lb, double above_member_in, double turns_about_in,
                                     double fastener_below_in);

/// One fastener in the plane of the face.
struct SlipFastener {
    Point at;                     ///< x along the rail, y upward
    double slip_lb_per_in = 0.0;  ///< alike in every direction, > 0
};
/// Forces of a rigid post on its fasteners in the plane of the face, by the elastic method: the force shared by
/// stiffness, and the moment about the stiffness's center by stiffness times distance. Common practice.
struct SlipGroup {
    std::vector<Point> force_lb;  ///< one for every fastener; empty unless balanced
    bool balanced = false;        ///< false: one place alone cannot hold the moment
    Point center;
    double moment_lb_in = 0.0;  ///< about the center, from x to y
};
/// `force_lb` acts at `at`. Throws std::invalid_argument for no fastener or a slip stiffness that is not above 0.
[[nodiscard]] SlipGroup slip_group(std::span<const SlipFastener> fasteners, Point at, Point force_lb);

}  // namespace toehold::mechanics
