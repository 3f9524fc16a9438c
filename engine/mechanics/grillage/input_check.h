#pragma once
// What a grillage refuses: each of these throws std::invalid_argument with the reason.
#include "mechanics/grillage/grillage.h"

namespace toehold::mechanics {

void check_grid(std::span<const Point> nodes, std::span<const GridMember> members, std::span<const GridJoint> joints,
                std::span<const GridSupport> supports);

void check_load(const GridLoad& load, std::size_t nodes);

/// The index of a member of `members`, or a throw.
[[nodiscard]] std::size_t checked_member(int member, std::size_t members);

/// The station, moved to the member's end where only rounding takes it beyond.
[[nodiscard]] double checked_station(double at_in, double length_in);

}  // namespace toehold::mechanics
