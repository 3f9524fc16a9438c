#pragma once
// The stiffness of a space frame between its unknowns, and its factor.
//
// The unknowns are the nodes' motions, but for a node that a joint hangs on another: its unknowns are its motion
// relative to that one, at the joint's place and along the joint's axes. A joint's force is then stiffness times an
// unknown, so that it keeps its digits however stiff the joint is, and a stiff joint spoils no other unknown's.
#include "mechanics/space_frame/beam.h"
#include "mechanics/stiffness/scaled_factor.h"

#include <optional>
#include <utility>
#include <vector>

namespace toehold::mechanics::space_frame {

/// A node's motion as the sum of turned and carried unknowns, by the numbers of the nodes these belong to.
using Expression = std::vector<std::pair<int, Matrix6>>;

struct PreparedJoint {
    int first = 0, second = 0;
    Vector6 stiffness;
    Matrix6 from_first, from_second;  ///< from a node's motion to the joint's place and axes
    Matrix6 to_second;                ///< and back
    bool hangs = false;               ///< the unknowns of `second` are this joint's stretch
};

struct PreparedSupport {
    int node = 0;
    Matrix6 stiffness;  ///< in its axes
    Matrix6 to_axes;
};

struct Assembly {
    std::vector<PreparedBeam> beams;
    std::vector<PreparedJoint> joints;
    std::vector<PreparedSupport> supports;
    std::vector<Expression> expressions;  ///< one for every node
    std::optional<ScaledFactor> factor;   ///< absent: a part can move freely

    [[nodiscard]] Vector6 motion(int node, const Eigen::VectorXd& unknowns) const;
    /// In the joint's axes.
    [[nodiscard]] Vector6 stretch(std::size_t joint, const Eigen::VectorXd& unknowns) const;
    /// Puts a load on a node, in the frame's axes, among the loads on the unknowns.
    void add_load(int node, const Vector6& load, Eigen::VectorXd& loads) const;
};

[[nodiscard]] Assembly assemble(std::span<const SpaceVector> nodes, std::span<const SpaceMember> members,
                                std::span<const SpaceJoint> joints, std::span<const SpaceSupport> supports);

}  // namespace toehold::mechanics::space_frame
