#pragma once
// The plate's outline as something to take hold of: its corners and sides by number, and what moving them makes of it.
// Corner 1 of a rectangle is its lower left (heel, -x), the others follow counter-clockwise; a polygon's are the
// file's. Side n runs from corner n to the next.
#include "drawing/scene/scene.h"
#include "model/base_detail.h"
#include "model/part.h"
#include "model/plate.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace toehold::editing {

struct Extent {
    drawing::Point low, high;
};
[[nodiscard]] Extent extent_of(const model::Outline& outline);

/// Corners that can be taken; none for a circle.
[[nodiscard]] std::vector<model::Position> corners(const model::Outline& outline);
/// The index of a part that is a corner (`model::corner_part`). Absent for another, or where the outline has none such.
[[nodiscard]] std::optional<std::size_t> corner_index(const model::Outline& outline, const model::PartId& part);

/// The same of the detail's plate; absent without one.
[[nodiscard]] std::optional<std::size_t> corner_of(const model::BaseDetail& detail, const model::PartId& part);

/// A rectangle stays one, with the opposite corner where it was; what would have no area stops short of it.
[[nodiscard]] model::Outline with_corner_at(const model::Outline& outline, std::size_t corner, model::Position to);
/// Unit vector away from the side, to the right of its run: outward where corners run counter-clockwise.
[[nodiscard]] drawing::Point normal_of_side(const model::Outline& outline, std::size_t side);
/// The side moved square to itself.
[[nodiscard]] model::Outline with_side_moved(const model::Outline& outline, std::size_t side, double along_normal_in);

/// Square corners in place of rounded ones; a circle becomes the polygon of 24 corners inside it.
[[nodiscard]] model::PolygonOutline as_polygon(const model::Outline& outline);

}  // namespace toehold::editing
