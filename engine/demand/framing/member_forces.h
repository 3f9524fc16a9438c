#pragma once
// What a mount puts on the members of the framing in one state: every anchor, tie and bearing at its place in space, as
// loads of the grillage and as level forces.
#include "demand/framing/frame.h"
#include "demand/framing/lateral.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace toehold::demand {

struct StateLoads {
    std::vector<mechanics::MemberLoad> upright;
    std::vector<LateralLoad> lateral;
    bool held_by_boards = false;  ///< boards hold the tops of joists and rim against this state's level forces
};

/// Whether boards are fastened to joists and rim and hold their tops; for a post on a side only where the file counts
/// that.
[[nodiscard]] bool boards_hold(const catalog::Resolved& resolved);

/// The same in a state. A member with a post on its side is held by them against no more than the push itself: where
/// ties draw past it, what the post presses on it goes to the ends of joists behind it.
[[nodiscard]] bool boards_hold(const catalog::Resolved& resolved, const Demand& demand, const State& state);

/// The member a post is fastened to the side of; absent for other mounts.
[[nodiscard]] std::optional<std::size_t> member_on_face(const catalog::Resolved& resolved);

/// What lies between each anchor's side member and its framing member, in: the height of the plate's shear over the
/// member. Level anchors have their own heights.
[[nodiscard]] std::vector<double> layers_in(const catalog::Resolved& resolved);

/// `layers_in`: as the function above gives them.
[[nodiscard]] StateLoads loads_of(const catalog::Resolved& resolved, const Demand& demand, const Frame& frame,
                                  const std::vector<double>& layers_in, const State& state);

}  // namespace toehold::demand
