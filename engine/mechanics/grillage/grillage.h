#pragma once
// A grid of beams in a plane, loaded square to it: each member bends, shears and twists. Plain arrays; in, lb, rad.
//
// Three freedoms a node, z up: deflection w and the rotations rx, ry about +x and +y (right-hand rule). A member is a
// uniform Timoshenko beam with Saint-Venant torsion between two nodes; a joint ties two nodes by springs at one place,
// which is how the end of a block holds to a joist; a support is springs from a node to the ground. Loads stand on
// nodes or anywhere along a member, and what they do there is exact.
#include "mechanics/plane/geometry.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace toehold::mechanics {

struct GridMember {
    int from = 0, to = 0;         ///< nodes at different places
    double bending_lb_in2 = 0.0;  ///< E I for bending out of the plane, > 0
    double torsion_lb_in2 = 0.0;  ///< G J, > 0
    double shear_lb = 0.0;        ///< G A_s; 0: no shear deformation
};

/// Springs between two nodes. A value of 0 leaves that motion free between them. The force is stiffness times a
/// difference of motions, known to about 1e-16 of them: 1e10 is stiff and keeps its digits, 1e15 does not.
struct GridJoint {
    int first = 0, second = 0;
    double vertical_lb_per_in = 0.0;  ///< >= 0
    double about_x_lb_in = 0.0;       ///< lb in per rad, >= 0
    double about_y_lb_in = 0.0;
    /// Where the springs are; each node is carried rigidly to this place (a block's end meets a joist's face, not its
    /// axis). Absent: at the nodes, which then stand at one place.
    std::optional<Point> at = std::nullopt;
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

/// A force and couples on a member at any station along it.
struct MemberLoad {
    int member = 0;      ///< index of the member
    double at_in = 0.0;  ///< from the member's `from` node, 0 to its length
    double up_lb = 0.0;
    double about_x_lb_in = 0.0;  ///< about the plan's axes, not the member's
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

/// At the member's ends, between the node and whatever load stands on the member there.
struct MemberForces {
    GridSection at_from, at_to;
};

/// Largest by size along a member, on both sides of every load; each >= 0.
struct GridExtremes {
    double shear_lb = 0.0, moment_lb_in = 0.0, torque_lb_in = 0.0;
};

struct GridSolution {
    bool stable = false;              ///< false: a part can move without resistance; then nothing else is given
    std::vector<GridMotion> motions;  ///< one for every node
    std::vector<MemberForces> members;
    std::vector<GridLoad> joints;  ///< what each joint puts on its second node (node: the second), at the joint's place
    std::vector<GridLoad> supports;  ///< what each support puts on its node
    /// Largest lack of balance at a node or of a member over the largest load, moments over the grid's size.
    double residual = 0.0;
};

/// A grid whose stiffness is factored once, to be loaded many times. Copies share what was factored; nothing in it
/// changes, so threads may share it too.
class Grillage {
  public:
    /// Throws std::invalid_argument for an index out of range, a member without length, a stiffness that is below 0 or
    /// not finite, or a joint without a place of its own between nodes that stand apart.
    Grillage(std::vector<Point> nodes, std::vector<GridMember> members, std::vector<GridJoint> joints,
             std::vector<GridSupport> supports);

    /// False: a part can move without resistance, and every solution says so and gives nothing else.
    [[nodiscard]] bool stable() const;

    /// Throws std::invalid_argument for an index or a station out of range, or a load that is not finite. A station
    /// beyond an end by no more than 1e-9 of the length is taken at the end.
    [[nodiscard]] GridSolution solve(std::span<const GridLoad> loads, std::span<const MemberLoad> member_loads) const;

    /// Exact at any station of a member. `member_loads` are those the solution was found for. Throws
    /// std::invalid_argument as `solve` does, and for a solution that is not stable or not of this grid's size.
    [[nodiscard]] GridMotion motion_at(const GridSolution& solution, int member, double at_in,
                                       std::span<const MemberLoad> member_loads) const;

    /// `member_loads` and errors as of `motion_at`.
    [[nodiscard]] GridExtremes extremes(const GridSolution& solution, int member,
                                        std::span<const MemberLoad> member_loads) const;
    /// The same from what passes at the member's beginning: of a sum of solutions, say, under the sum of their loads.
    [[nodiscard]] GridExtremes extremes(const GridSection& at_from, int member,
                                        std::span<const MemberLoad> member_loads) const;

  private:
    struct Prepared;
    std::shared_ptr<const Prepared> prepared_;
};

/// A grid loaded once, on its nodes alone. Errors as of Grillage.
[[nodiscard]] GridSolution solve_grillage(std::span<const Point> nodes, std::span<const GridMember> members,
                                          std::span<const GridJoint> joints, std::span<const GridSupport> supports,
                                          std::span<const GridLoad> loads);

}  // namespace toehold::mechanics
