#pragma once
// One member of a grillage: its stiffness, what loads along it put on its nodes, and what passes and moves inside it.
//
// The member's own motions at an end are (w, twist about its axis, slope): the slope is its section's rotation, which
// is dw/ds where it does not shear. Positive slope rises from `from` to `to`.
#include "mechanics/grillage/grillage.h"

#include <Eigen/Core>

#include <array>

namespace toehold::mechanics {

using Vector6 = Eigen::Matrix<double, 6, 1>;
using Matrix6 = Eigen::Matrix<double, 6, 6>;

/// Direction of a member in plan, and its length.
struct MemberAxis {
    double cos = 1.0, sin = 0.0, length = 0.0;
};

[[nodiscard]] MemberAxis axis_of(Point from, Point to);

struct PreparedMember {
    GridMember of;
    MemberAxis axis;
    Matrix6 own_forces;  ///< from (w, rx, ry) at both nodes to what the nodes put on the member, along its own motions
    Matrix6 stiffness;   ///< between (w, rx, ry) at both nodes
};

[[nodiscard]] PreparedMember prepare_member(std::span<const Point> nodes, const GridMember& member);

/// Places of both nodes' (w, rx, ry) among the grid's motions.
[[nodiscard]] std::array<Eigen::Index, 6> freedoms(int from, int to);

/// What a load on the member does to its nodes: force and couples about x and y, `from` first.
[[nodiscard]] Vector6 on_nodes(const PreparedMember& member, const MemberLoad& load);

/// `motion`: (w, rx, ry) at both nodes. Of `loads`, only those that name the member `index` count, here and below.
[[nodiscard]] MemberForces forces_at_ends(const PreparedMember& member, int index, const Vector6& motion,
                                          std::span<const MemberLoad> loads);

enum class Side { before_load, after_load };

/// What passes through a cut, beside the loads that stand at its very station.
[[nodiscard]] GridSection section_at(const PreparedMember& member, int index, const GridSection& at_from, double at_in,
                                     Side side, std::span<const MemberLoad> loads);

[[nodiscard]] GridMotion motion_inside(const PreparedMember& member, int index, const GridMotion& from,
                                       const GridSection& at_from, double at_in, std::span<const MemberLoad> loads);

[[nodiscard]] GridExtremes extremes_of(const PreparedMember& member, int index, const GridSection& at_from,
                                       std::span<const MemberLoad> loads);

}  // namespace toehold::mechanics
