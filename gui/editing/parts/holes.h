#pragma once
// Holes by their ids, and what keeps a detail whole when they come and go: ids, anchor groups, the plate's reference.
#include "model/base_detail.h"
#include "model/part.h"

#include <string>
#include <vector>

namespace toehold::editing {

inline constexpr std::size_t most_holes = 100;  ///< of a plate, as `model::validate` has it

[[nodiscard]] const model::Hole* find_hole(const model::Plate& plate, const std::string& id);
[[nodiscard]] model::Hole* find_hole(model::Plate& plate, const std::string& id);
/// The nearest hole's id; empty where the plate has none.
[[nodiscard]] std::string nearest_hole(const model::Plate& plate, model::Position at);
/// The hole that an anchor stands for; nullptr for any other part.
[[nodiscard]] const model::Hole* hole_of(const model::BaseDetail& detail, const model::PartId& part);
/// Ids of the holes among the parts, in the plate's order; an anchor stands for its hole.
[[nodiscard]] std::vector<std::string> holes_among(const model::BaseDetail& detail,
                                                   const std::vector<model::PartId>& parts);
/// A to Z, then AA to ZZ: the first that no hole has.
[[nodiscard]] std::string free_hole_id(const model::Plate& plate);
[[nodiscard]] double width_in(const model::Hole& hole);
/// Whether a hole is centered there, within 1/1000 in.
[[nodiscard]] bool hole_stands_at(const model::Plate& plate, model::Position at);

/// Adds the hole under a free id, which it returns, with an anchor as hole `like` has; as no other's where that is
/// empty.
std::string add_hole_like(model::BaseDetail& detail, model::Hole hole, const std::string& like);
/// Takes the ids out of the anchor groups; a group that named holes and names none any more goes with them.
void forget_anchors(model::BaseDetail& detail, const std::vector<std::string>& holes);

/// The plate is no longer the one its reference names.
void own_plate(model::BaseDetail& detail);

}  // namespace toehold::editing
