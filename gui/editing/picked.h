#pragma once
// What a pane asks about parts that are picked: which lie in a box of a drawing, what they are. None names a mount.
#include "drawing/scene/scene.h"
#include "model/base_detail.h"
#include "model/part.h"

#include <optional>
#include <vector>

namespace toehold::editing {

/// The anchors whose centers lie in a box of the mount's own drawing, given by two of its corners.
[[nodiscard]] std::vector<model::PartId> anchors_within(const model::BaseDetail& detail, drawing::Point one,
                                                        drawing::Point other);
[[nodiscard]] std::vector<model::PartId> all_anchors(const model::BaseDetail& detail);

/// The hole in a plate that an anchor goes through; absent for any other part.
[[nodiscard]] std::optional<model::Hole> hole_at(const model::BaseDetail& detail, const model::PartId& part);
/// From an anchor's center to the nearest edge of the plate it goes through, or of the member it is driven into from
/// the side and the post or bracket against it, in; absent for any other part.
[[nodiscard]] std::optional<double> edge_distance_in(const model::BaseDetail& detail, const model::PartId& part);
/// Whether there is an outline that can be made one of free corners and is none yet.
[[nodiscard]] bool corners_can_be_freed(const model::BaseDetail& detail);

}  // namespace toehold::editing
