#pragma once
// What a unit force does from every station that it may stand at: an envelope asks for thousands of pushes, and each is
// a sum of three unit forces.
#include "mechanics/space_frame/space_frame.h"

namespace toehold::mechanics {

struct FrameStation {
    int member = 0;
    double at_in = 0.0;  ///< from the member's `from` node
};

class InfluenceLines {
  public:
    /// Solves three unit forces at each station, many at a time. Errors as of SpaceFrame::solve. Nothing in it changes
    /// afterwards, so threads may share it.
    InfluenceLines(const SpaceFrame& frame, std::vector<FrameStation> stations);

    [[nodiscard]] std::span<const FrameStation> stations() const { return stations_; }

    /// Of a force, in lb and the frame's axes, at a station; without a solve. Its residual is the largest of the unit
    /// forces'. Not stable if the frame is not. Throws std::out_of_range.
    [[nodiscard]] SpaceSolution under(std::size_t station, const SpaceVector& force_lb) const;

    /// The load itself, for what SpaceFrame says of the insides of members. Throws std::out_of_range.
    [[nodiscard]] SpaceLoads load(std::size_t station, const SpaceVector& force_lb) const;

    /// What one support puts on its node, in its axes: the fast way where an envelope wants no more. Throws
    /// std::out_of_range for a station or support that is not there, or a frame that is not stable.
    [[nodiscard]] SpaceForce support(std::size_t station, const SpaceVector& force_lb, std::size_t support) const;

  private:
    std::vector<FrameStation> stations_;
    std::vector<std::array<SpaceSolution, 3>> along_axes_;
};

}  // namespace toehold::mechanics
