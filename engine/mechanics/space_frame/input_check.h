#pragma once
// What a space frame refuses.
#include "mechanics/space_frame/space_frame.h"

namespace toehold::mechanics::space_frame {

/// Each throws std::invalid_argument.
void check_frame(std::span<const SpaceVector> nodes, std::span<const SpaceMember> members,
                 std::span<const SpaceJoint> joints, std::span<const SpaceSupport> supports);

void check_finite(const SpaceVector& vector);

/// The index, or a throw that says `what`.
[[nodiscard]] std::size_t checked_index(int index, std::size_t count, const char* what);

/// The station, moved to the member's end where only rounding takes it beyond.
[[nodiscard]] double checked_station(double at_in, double length_in);

}  // namespace toehold::mechanics::space_frame
