#pragma once
// A grid of beams in a plane, loaded square to it: each member bends, shears and twists. Plain arrays; in, lb, rad.
//
// Three freedoms a node, z up: deflection w and the rotations rx, ry about +x and +y (right-hand rule). A member is a
// uniform Timoshenko beam with Saint-Venant torsion between two nodes; a joint ties two nodes at one place by springs,
// which is how the end of a block holds to a joist; a support is springs from a node to the ground.
#include "mechanics/geometry.h"

#include <span>
#include <vector>

namespace toehold::mechanics {

struct GridMember {
    int from = 0, to = 0;         ///< nodes at different places
    double bending_lb_in2 = 0.0;  ///< E I for bending out of the plane, > 0
    double torsion_lb_in2 = 0.0;  ///< G J, > 0
    double shear_lb = 0.0;        ///< G A_s; 0: no shear deformation
};

/// Springs between two nodes at one place. A value of 0 leaves that motion free between them.
struct GridJoint {
    int first = 0, second = 0;
    double vertical_lb_per_in = 0.0;  ///< >= 0
    double about_x_lb_in = 0.0;       ///< lb in per rad, >= 0
    double about_y_lb_in = 0.0;
};

/// Springs from a node to the ground; 0 leaves the motion free.
struct GridSupport {
    int node = 0;
    double vertical_lb_per_in = 0.0;
    double about_x_lb_in = 0.0;
    double about_y_lb_in = 0.0;
};

struct GridLoad {
    int node = 0;
    double up_lb = 0.0;
    double about_x_lb_in = 0.0;
    double about_y_lb_in = 0.0;
};

struct GridMotion {
    double w_in = 0.0, rx_rad = 0.0, ry_rad = 0.0;
};

/// What passes through a cut, in the member's own axes: along it from `from` to `to`, its left, up. On the face of the
/// part on the `from` side of the cut. Moment > 0 where the top fibres are pressed (sagging).
struct GridSection {
    double shear_lb = 0.0;  ///< upward force of the `from` part on the `to` part
    double moment_lb_in = 0.0;
    double torque_lb_in = 0.0;  ///< of the `from` part on the `to` part about the member's axis
};

struct MemberForces {
    GridSection at_from, at_to;
};

struct GridSolution {
    bool stable = false;              ///< false: a part can move without resistance; then nothing else is given
    std::vector<GridMotion> motions;  ///< one for every node
    std::vector<MemberForces> members;
    std::vector<GridLoad> joints;    ///< what each joint puts on its second node (node: the second)
    std::vector<GridLoad> supports;  ///< what each support puts on its node
    double residual = 0.0;  ///< largest lack of balance at a node over the largest load, moments over the grid's size
};

/// Throws std::invalid_argument for an index out of range, a member without length, or a stiffness below 0.
[[nodiscard]] GridSolution solve_grillage(std::span<const Point> nodes, std::span<const GridMember> members,
                                          std::span<const GridJoint> joints, std::span<const GridSupport> supports,
                                          std::span<const GridLoad> loads);

}  // namespace toehold::mechanics
