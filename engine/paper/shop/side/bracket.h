#pragma once
// What the shop makes for a detail, and the bracket plate of a post on a member's side: its views and its weld.
#include "catalog/resolve.h"
#include "format/phrase.h"
#include "paper/shop/hole_schedule.h"
#include "paper/shop/view_layout.h"

namespace toehold::paper::shop {

/// The plate that is cut, and its metal.
struct MadePlate {
    model::Plate plate;
    catalog::Metal metal;
};
/// The base plate; of a post on a member's side its bracket plate as one looks at the face the post is welded to: x to
/// the right, y up, from the post's axis at the height of the member's top edge. Throws std::invalid_argument where
/// nothing is cut in metal.
[[nodiscard]] MadePlate made_plate(const catalog::Resolved& resolved);
/// Whether there is such a plate.
[[nodiscard]] bool has_made_plate(const model::BaseDetail& detail);

/// `fillet 3/16 on both sides of the post, E70`
[[nodiscard]] format::Phrase bracket_weld_words(const catalog::Resolved& resolved, units::System system);

/// The holes of a bracket's plate from its left and lower edges, seen from the post's side.
[[nodiscard]] Schedule bracket_hole_schedule(const model::Plate& plate, const format::Locale& locale,
                                             std::size_t most_rows);

/// The bracket's face with holes, post and weld, and its side; as `laid_out_views` lays out a base plate.
[[nodiscard]] Views laid_out_bracket(const catalog::Resolved& resolved, const format::Locale& locale,
                                     const drawing::Area& frame, double lettering);

}  // namespace toehold::paper::shop
