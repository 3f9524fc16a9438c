#pragma once
// How a level fastener of a post on a member's side lies, by the model alone.
#include "model/base_detail.h"

#include <optional>

namespace toehold::editing {

/// Along y, from the post's axis.
struct LevelFastener {
    double head_y_in = 0.0;   ///< of the face its head bears on: the post's far side, or the bracket plate's
    double towards_y = -1.0;  ///< the way it is driven
};
/// The same for all of the mount.
[[nodiscard]] LevelFastener level_fastener(const model::BaseDetail& detail);

/// The depth of the member the post lies against; absent where the framing has none of that id.
[[nodiscard]] std::optional<double> member_depth_in(const model::BaseDetail& detail);

/// From a place on the face to the nearest edge of the member and of the post or bracket plate, in; negative beyond
/// one.
[[nodiscard]] std::optional<double> edge_distance_on_face(const model::BaseDetail& detail, model::Position at);

}  // namespace toehold::editing
