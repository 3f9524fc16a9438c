#pragma once
// The plate's holes, and a polygon's corners, as a shop measures them: from two edges, or from a round plate's center.
#include "drawing/scene/scene.h"
#include "format/phrase.h"
#include "model/plate.h"
#include "paper/shop/schedule.h"
#include "units/quantity.h"

namespace toehold::paper::shop {

/// Where coordinates begin, in the plate's own axes: the lower left corner of the rectangle around the plate as the
/// plan shows it, or a round plate's center.
[[nodiscard]] drawing::Point datum_in(const model::Outline& outline);

/// Shortest from the center of a round hole, or the axis of a slot, to the plate's edge, in.
[[nodiscard]] double edge_distance_in(const model::Outline& outline, const model::Hole& hole);

/// `⌀ 7/16`, `7/16 x 1 1/2 at 30°`.
[[nodiscard]] format::Phrase size_words(const model::Hole& hole, units::System system);

/// No more rows than `most_rows`; says how many it leaves out and where they are.
[[nodiscard]] Schedule hole_schedule(const model::Plate& plate, const format::Locale& locale, std::size_t most_rows);
/// Of a polygon, two corners a row; without rows for other outlines.
[[nodiscard]] Schedule corner_schedule(const model::Outline& outline, const format::Locale& locale,
                                       std::size_t most_rows);

}  // namespace toehold::paper::shop
