#pragma once
// Whether what holds the post can balance the load at all: whether the load lies in the cone of what pulling fasteners,
// pressed bearings and slip springs can put on a rigid post. Bodies behind it hold every motion and do not matter.
#include "mechanics/side_post/post_model.h"

#include <optional>

namespace toehold::mechanics::side_post {

/// A rigid motion that the load drives and nothing resists, its largest part 1 or -1; absent where there is none.
[[nodiscard]] std::optional<Vector6> unresisted_motion(const PostModel& model);

}  // namespace toehold::mechanics::side_post
