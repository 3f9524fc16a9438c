#pragma once
// Edits of the mount and of the framing, as pure functions: a detail in, the changed detail out. A new anchor takes the
// first free letter, and the group of the anchor it was made from. Places of anchors are those of the mount's own
// drawing: a plate's holes in plan; places up a post's side with x along the rail and y up from the member's top edge.
#include "catalog/catalog.h"
#include "format/phrase.h"
#include "model/base_detail.h"
#include "model/part.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::editing {

struct Edit {
    model::BaseDetail detail;
    format::Phrase step;                  ///< for the history; empty: nothing to do, and `refusal` says why
    std::vector<model::PartId> selected;  ///< parts to select afterwards
    format::Phrase refusal;               ///< one sentence; empty when done
};

// `parts` are whole; an anchor stands for its hole, and a corner of the outline is one where corners can be moved,
// placed or erased. Parts an edit does not concern are left alone. An edit of the plate drops the plate's reference,
// which names another plate.
/// A hole with its anchor, or a fastener up a post's side.
[[nodiscard]] Edit add_hole(const model::BaseDetail& detail, model::Position at);
[[nodiscard]] Edit add_corner(const model::BaseDetail& detail, model::Position at);  ///< into the nearest side
[[nodiscard]] Edit add_block(const model::BaseDetail& detail,
                             model::Position at);  ///< like the nearest one, between the joists there
[[nodiscard]] Edit erase(const model::BaseDetail& detail, const std::vector<model::PartId>& parts);
/// A block's copy lies beside its original at least, a fastener's up a post's side below it.
[[nodiscard]] Edit duplicate(const model::BaseDetail& detail, const std::vector<model::PartId>& parts,
                             model::Position offset_in);
enum class MirrorLine { x_axis, y_axis };  ///< the plate's own axes through the post
/// Kept originals get new images beside them, except where a hole or block stands there already.
[[nodiscard]] Edit mirror(const model::BaseDetail& detail, const std::vector<model::PartId>& parts, MirrorLine line,
                          bool keep_originals);
/// `columns` x `rows` of every anchor among the parts, the originals counted; pitches may be negative. Up a post's side
/// rows go down.
[[nodiscard]] Edit array(const model::BaseDetail& detail, const std::vector<model::PartId>& parts, int columns,
                         int rows, double pitch_x_in, double pitch_y_in);
/// `count` in all on a circle about the post.
[[nodiscard]] Edit array_round(const model::BaseDetail& detail, const std::vector<model::PartId>& parts, int count);
/// Blocks and joists follow the part of the step across themselves; ends of blocks that stood against a joist go with
/// it. Anchors follow what of the step their drawing shows.
[[nodiscard]] Edit nudge(const model::BaseDetail& detail, const std::vector<model::PartId>& parts,
                         const model::Place& step);
/// The same by a step in plan.
[[nodiscard]] Edit nudge(const model::BaseDetail& detail, const std::vector<model::PartId>& parts, double dx_in,
                         double dy_in);
[[nodiscard]] Edit place_at(const model::BaseDetail& detail, const model::PartId& part, model::Position at);
[[nodiscard]] Edit to_slot(const model::BaseDetail& detail, const std::vector<model::PartId>& parts, double length_in,
                           double angle_deg);
[[nodiscard]] Edit to_round(const model::BaseDetail& detail, const std::vector<model::PartId>& parts);
[[nodiscard]] Edit to_polygon(const model::BaseDetail& detail);  ///< outline of free corners from a rectangle or circle
[[nodiscard]] Edit use_plate(const model::BaseDetail& detail, const model::Plate& stock);  ///< anchors follow ids
/// A pattern copied to the clipboard and back: holes only, as a plate document's text.
[[nodiscard]] std::string copy_holes(const model::BaseDetail& detail, const std::vector<model::PartId>& parts);
[[nodiscard]] Edit paste_holes(const model::BaseDetail& detail, const std::string& text);

/// A new detail on a stock plate: four-square defaults that the window says are a start and nothing more.
[[nodiscard]] model::BaseDetail starting_detail(const model::Plate& stock, const catalog::Catalog& catalog);
/// A new detail of a wood post bolted to the outside of a doubled rim: an example, as its note says.
[[nodiscard]] model::BaseDetail starting_side_detail(const catalog::Catalog& catalog);

/// Where a part can be placed by typed coordinates: an anchor's center in its mount's drawing, a block's middle in
/// plan, a corner of the outline; absent for other parts.
[[nodiscard]] std::optional<model::Position> place_of(const model::BaseDetail& detail, const model::PartId& part);

}  // namespace toehold::editing
