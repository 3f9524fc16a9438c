#pragma once
// Posts of one project face different ways, and each mount is described with outward as +y. So the framing is turned by
// quarters until it lies as the post sees it.
#include "model/framing.h"
#include "model/place.h"

#include <string_view>

namespace toehold::model {

/// Where "outward", the +y of its mount, lies for a post of the project.
enum class PostFacing { plus_y, minus_y, plus_x, minus_x };

/// As a file says it: `+y`, `-y`, `+x`, `-x`.
[[nodiscard]] std::string_view word(PostFacing facing);

/// Where an axis of the project runs for a post.
struct TurnedAxis {
    PlanAxis axis = PlanAxis::x;  ///< of the post's own
    bool reversed = false;        ///< runs the other way
    friend bool operator==(const TurnedAxis&, const TurnedAxis&) = default;
};
[[nodiscard]] TurnedAxis turned(PlanAxis axis, PostFacing facing);

/// In the project's axes, a unit vector in plan.
[[nodiscard]] Position outward(PostFacing facing);

/// What adds to a direction in the post's own axes, counterclockwise from its +x, to make one in the project's: 0, or a
/// quarter, half or three quarters of a turn.
[[nodiscard]] double turn_rad(PostFacing facing);

/// Framing about the post, in the project's axes, as the post sees it. Members, supports and their ids keep their
/// order; where a member then runs the other way its two ends change names, with all that is at them.
[[nodiscard]] Framing turned(const Framing& framing, PostFacing facing);

}  // namespace toehold::model
