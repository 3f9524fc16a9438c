#pragma once
// The straight line that fits readings best: what stiffness a measured push and movement imply, and how much play came
// before it. Plain arrays, any units.
#include <span>

namespace toehold::mechanics {

struct Reading {
    double movement = 0.0;  ///< >= 0
    double push = 0.0;      ///< >= 0
};

/// push = stiffness (movement - play).
struct StraightLine {
    double stiffness = 0.0;
    double play = 0.0;             ///< movement before any push; below 0: the push came before the movement
    double stiffness_error = 0.0;  ///< standard error of the stiffness; 0 where the readings leave none to judge by
};

/// Through the origin, without play: the sum of push times movement over that of movement squared. One reading or more.
/// Throws std::invalid_argument on none, on a reading below 0, or where nothing moved.
[[nodiscard]] StraightLine line_through_origin(std::span<const Reading> readings);

/// With play, by least squares of the push. Two readings or more at two movements or more. Throws std::invalid_argument
/// as above, or where the push does not grow with the movement.
[[nodiscard]] StraightLine line_with_play(std::span<const Reading> readings);

}  // namespace toehold::mechanics
