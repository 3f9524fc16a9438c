#pragma once
// One piece of the post between two nodes: how it bends in one plane. A Timoshenko beam that is exact under forces at
// its nodes; its motion in between is cubic (J. S. Przemieniecki, Theory of Matrix Structural Analysis, 1968, 5.6; Z.
// Friedman and J. B. Kosmatka, Computers and Structures 47, 1993; both from memory, held by a test to a cantilever).
#include <Eigen/Core>

namespace toehold::mechanics::side_post {

/// Freedoms of one plane: motion and slope at the lower node, then at the upper.
struct BeamPiece {
    double length_in = 0.0;
    double bending_lb_in2 = 0.0;
    double shear_lb = 0.0;  ///< 0: no shear deformation

    /// 12 E I/(G A_s l^2)
    [[nodiscard]] double shear_share() const;
    [[nodiscard]] Eigen::Matrix4d stiffness() const;
    /// The motion at `part`, from 0 at the lower node to 1 at the upper, of each freedom.
    [[nodiscard]] Eigen::Vector4d motion(double part) const;
};

}  // namespace toehold::mechanics::side_post
