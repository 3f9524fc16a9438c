#pragma once
// Horizontal forces that arrive at a joist's top or side from the base, state by state: what its boards must hold.
#include "checks/registry.h"
#include "model/member.h"

#include <cstddef>
#include <vector>

namespace toehold::checks {

/// All that one joist gets in one state.
struct BoardPush {
    std::size_t joist = 0;                 ///< number in `model::members`
    double across_lb = 0.0;                ///< sum of the sizes of the forces square to the joist
    double along_lb = 0.0;                 ///< sum of the sizes of the forces along it
    double middle_in = 0.0;                ///< where their resultant stands along the joist, each by its size
    double first_in = 0.0, last_in = 0.0;  ///< the outermost of their places along it

    [[nodiscard]] double force_lb() const;
};

/// From anchors that stand in a joist and from the ends of blocks: a block presses along itself on the one joist it is
/// pushed to, and gives what crosses it to the joists at both of its ends as a simple beam. What a rim gets goes to the
/// joists on either side of it, as to a simple beam's supports. What a post on a member's side draws on and presses
/// counts as one net force on each joist: boards hold its top against no more than that. `members` are the framing's.
/// Needs the demand's framing.
[[nodiscard]] std::vector<BoardPush> board_pushes(const CheckInput& input, const std::vector<model::Member>& members,
                                                  std::size_t state);

}  // namespace toehold::checks
