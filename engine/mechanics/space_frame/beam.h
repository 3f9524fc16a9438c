#pragma once
// One member of a space frame: its stiffness, what loads along it put on its nodes, and what passes and moves inside
// it.
//
// All of it rests on one function, the motion of a beam from one end on when what passes there is known: the beam held
// at `from` and free at `to` gives its flexibility, hence stiffness and what its nodes feel of a load.
#include "mechanics/space_frame/space_frame.h"

#include <Eigen/Core>

namespace toehold::mechanics::space_frame {

using Vector3 = Eigen::Vector3d;
using Matrix3 = Eigen::Matrix3d;
using Vector6 = Eigen::Matrix<double, 6, 1>;
using Matrix6 = Eigen::Matrix<double, 6, 6>;

[[nodiscard]] inline Vector3 eigen(const SpaceVector& v) { return {v.x, v.y, v.z}; }
[[nodiscard]] inline SpaceVector plain(const Vector3& v) { return {v.x(), v.y(), v.z()}; }
[[nodiscard]] Vector6 six(const SpaceForce& force);
[[nodiscard]] SpaceForce as_force(const Vector6& six);

/// Rows are the axes: from the frame's components to theirs.
[[nodiscard]] Matrix3 rows_of(const SpaceAxes& axes);
/// The same of the two halves of six.
[[nodiscard]] Matrix6 twice(const Matrix3& rows);

/// From the six motions of a place to those of one an arm away that moves rigidly with it. Its transpose carries a
/// force at the far place back.
[[nodiscard]] Matrix6 carried(const Vector3& arm);

struct PreparedBeam {
    SpaceMember of;
    double length = 0.0;
    Matrix3 axes;                       ///< rows: the member's x, y, z
    Matrix6 tip_stiffness;              ///< at `to`, held at `from`, in the member's axes
    Matrix6 carry;                      ///< from `from` to `to`, in the member's axes
    Matrix6 from_from, from_to, to_to;  ///< stiffness between the nodes, in the frame's axes
};

[[nodiscard]] PreparedBeam prepare_beam(std::span<const SpaceVector> nodes, const SpaceMember& member);

/// A load along a member in the member's axes: at a point, or even from `from_in` to `to_in`.
struct AlongLoad {
    int member = 0;
    bool line = false;
    double from_in = 0.0, to_in = 0.0;
    Vector3 force;   ///< lb, or lb/in of a line
    Vector3 couple;  ///< lb in; 0 of a line
};

/// What a load on the member does to its nodes, in the frame's axes.
struct OnNodes {
    Vector6 from, to;
};
[[nodiscard]] OnNodes on_nodes(const PreparedBeam& beam, const AlongLoad& load);

/// `from`, `to`: motions of the nodes in the frame's axes. Of `loads`, only those that name the member `index` count,
/// here and below.
[[nodiscard]] SpaceMemberForces forces_at_ends(const PreparedBeam& beam, int index, const Vector6& from,
                                               const Vector6& to, std::span<const AlongLoad> loads);

[[nodiscard]] Vector6 section_inside(int index, const Vector6& at_from, double at_in, BesideLoad side,
                                     std::span<const AlongLoad> loads);

/// `from`: the node's motion in the frame's axes, as is the result.
[[nodiscard]] Vector6 motion_inside(const PreparedBeam& beam, int index, const Vector6& from, const Vector6& at_from,
                                    double at_in, std::span<const AlongLoad> loads);

[[nodiscard]] SpaceExtremes extremes_inside(const PreparedBeam& beam, int index, const Vector6& at_from,
                                            std::span<const AlongLoad> loads);

}  // namespace toehold::mechanics::space_frame
