#pragma once
// What a space frame keeps: its nodes, stiffness and factor; loads on their way in, forces on their way out.
#include "mechanics/space_frame/assembly.h"

namespace toehold::mechanics::space_frame {

struct PreparedFrame {
    std::vector<SpaceVector> nodes;
    Assembly assembly;
    double reach_in = 0.0;  ///< the frame's size

    /// Or a throw, here and below.
    [[nodiscard]] const PreparedBeam& beam(int member) const;
    /// The member's beam, where the solution is of this frame.
    [[nodiscard]] const PreparedBeam& checked(const SpaceSolution& solution, int member) const;

    void check(const std::vector<SpaceNodeLoad>& loads) const;
    /// Loads along members, checked, in their members' axes.
    [[nodiscard]] std::vector<AlongLoad> along(const SpaceLoads& loads) const;

    /// What checked loads put on the unknowns.
    [[nodiscard]] Eigen::VectorXd on_unknowns(const std::vector<SpaceNodeLoad>& loads,
                                              const std::vector<AlongLoad>& along) const;
    [[nodiscard]] SpaceSolution found(const Eigen::VectorXd& unknowns, const std::vector<SpaceNodeLoad>& loads,
                                      const std::vector<AlongLoad>& along) const;
};

}  // namespace toehold::mechanics::space_frame
