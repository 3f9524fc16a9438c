#pragma once
// Where a mount's anchors stand, whatever the mount, as its own drawing shows them: a plate's holes in plan; places up
// a post's side on the face it lies against, x along the rail, y up from the member's top edge. What moves, copies or
// erases anchors by hand asks this and need not know the mount.
#include "model/base_detail.h"
#include "model/part.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::editing {

inline constexpr std::size_t most_anchors = 100;  ///< of a mount, as `model::validate` has it

struct AnchorPlace {
    std::string id;
    model::Position at;
};

/// In the mount's order.
[[nodiscard]] std::vector<AnchorPlace> places_of_anchors(const model::BaseDetail& detail);
/// Absent where none has the id.
[[nodiscard]] std::optional<model::Position> anchor_place(const model::BaseDetail& detail, const std::string& id);
/// Ids of the anchors among the parts, in the mount's order.
[[nodiscard]] std::vector<std::string> anchors_among(const model::BaseDetail& detail,
                                                     const std::vector<model::PartId>& parts);
/// The nearest anchor's id; empty where there is none.
[[nodiscard]] std::string nearest_anchor(const model::BaseDetail& detail, model::Position at);
/// Whether one is centered there, within 1/1000 in.
[[nodiscard]] bool anchor_stands_at(const model::BaseDetail& detail, model::Position at);
/// A to Z, then AA to ZZ: the first that no place and no tie has.
[[nodiscard]] std::string free_anchor_id(const model::BaseDetail& detail);

/// Moves it there, as far as it may: nothing up a side is fastened above the member's top edge. An unknown id changes
/// nothing.
void put_anchor(model::BaseDetail& detail, const std::string& id, model::Position at);
/// Adds one as `like` is, under a free id, which it returns; as no other where that is empty.
std::string copy_anchor(model::BaseDetail& detail, const std::string& like, model::Position at);
/// Takes them away, and every mention of them.
void erase_anchors(model::BaseDetail& detail, const std::vector<std::string>& ids);

/// Ties that a bolt hangs are at that bolt, where there is one of that id.
void hang_ties(model::SideFastened& mount);

/// What of a step in space an anchor follows, in its own drawing.
[[nodiscard]] model::Position anchor_step(const model::BaseDetail& detail, const model::Place& step);

/// The plate whose holes and outline can be shaped by hand; nullptr for a mount without one.
[[nodiscard]] const model::Plate* shaped_plate(const model::BaseDetail& detail);
[[nodiscard]] model::Plate* shaped_plate(model::BaseDetail& detail);

}  // namespace toehold::editing
