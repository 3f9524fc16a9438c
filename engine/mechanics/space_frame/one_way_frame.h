#pragma once
// A space frame on springs that are stiffer one way than the other: a base pushed outward leans on other parts than one
// pushed inward, a foot presses and does not pull.
//
// The energy is convex, so the answer is one. The frame is factored with every spring at its stiffer side; where a
// spring turns to its softer side, a force that takes the difference away is found among the springs alone.
#include "mechanics/space_frame/space_frame.h"

namespace toehold::mechanics {

/// Between a node and the ground. Its motion is along . move + about . turn: a direction alone for a spring at the
/// node, with about = arm cross along for one at an arm, about alone for a rotation.
struct OneWaySpring {
    int node = 0;
    SpaceVector along, about;                           ///< in the frame's axes, not both 0
    double where_positive = 0.0, where_negative = 0.0;  ///< force over motion, by the sign of the motion; each >= 0
};

struct OneWaySolution {
    SpaceSolution frame;          ///< as of SpaceFrame, the springs not among its supports
    std::vector<double> motions;  ///< of each spring
    std::vector<double> forces;   ///< what each puts on its node, along its motion: - stiffness times motion
    int steps = 0;                ///< changes of side until it was found
    /// Largest difference between a spring's force in the frame's balance and what its motion calls for, over the
    /// largest spring force.
    double complementarity = 0.0;
};

/// Copies share what was factored; threads may share it.
class OneWayFrame {
  public:
    /// Throws std::invalid_argument as SpaceFrame does, and for a spring without direction or with a stiffness out of
    /// range. A side softer than 1e-6 of the other loses digits, which `complementarity` shows.
    OneWayFrame(const std::vector<SpaceVector>& nodes, const std::vector<SpaceMember>& members,
                const std::vector<SpaceJoint>& joints, const std::vector<SpaceSupport>& supports,
                std::vector<OneWaySpring> springs);

    /// With every spring at its stiffer side, as a support behind the others: what `settle` takes solutions of, and
    /// what tells the insides of members.
    [[nodiscard]] const SpaceFrame& stiff() const { return frame_; }

    /// `frame.stable` is false where a part can move without resistance on the sides that the load calls for; then
    /// nothing else is given. Errors as of SpaceFrame::solve.
    [[nodiscard]] OneWaySolution solve(const SpaceLoads& loads) const;

    /// From a solution of `stiff()`, of influence lines say, without a solve. Its residual is the largest of what was
    /// added. Throws std::invalid_argument for one that is not of that frame.
    [[nodiscard]] OneWaySolution settle(const SpaceSolution& stiff) const;

  private:
    struct Released;
    [[nodiscard]] std::optional<Released> released(const SpaceSolution& stiff) const;
    [[nodiscard]] OneWaySolution told(SpaceSolution settled, const Released& released) const;

    std::vector<OneWaySpring> springs_;
    std::size_t supports_ = 0;  ///< the caller's
    SpaceFrame frame_;
    /// The frame under a unit force along each spring's motion, and the motions of all springs then.
    std::shared_ptr<const std::vector<SpaceSolution>> under_unit_;
    std::shared_ptr<const std::vector<double>> compliance_;  ///< row after row
};

}  // namespace toehold::mechanics
