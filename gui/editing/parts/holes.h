#pragma once
// A plate's holes by their ids, and what keeps a detail whole when they come and go: ids, anchor groups, the plate's
// reference.
#include "model/base_detail.h"
#include "model/part.h"

#include <string>
#include <vector>

namespace toehold::editing {

[[nodiscard]] const model::Hole* find_hole(const model::Plate& plate, const std::string& id);
[[nodiscard]] model::Hole* find_hole(model::Plate& plate, const std::string& id);
/// The hole that an anchor stands for; nullptr for any other part, and without a plate.
[[nodiscard]] const model::Hole* hole_of(const model::BaseDetail& detail, const model::PartId& part);
/// Ids of the holes among the parts, in the plate's order; an anchor stands for its hole. None without a plate.
[[nodiscard]] std::vector<std::string> holes_among(const model::BaseDetail& detail,
                                                   const std::vector<model::PartId>& parts);
[[nodiscard]] double width_in(const model::Hole& hole);

/// Adds the hole under a free id, which it returns, with an anchor as hole `like` has; as no other's where that is
/// empty.
std::string add_hole_like(model::BaseDetail& detail, const model::Hole& hole, const std::string& like);
/// Takes the ids out of the anchor groups; a group that named holes and names none any more goes with them.
void forget_anchors(model::BaseDetail& detail, const std::vector<std::string>& holes);

/// The plate, where there is one, is no longer the one its reference names.
void own_plate(model::BaseDetail& detail);

}  // namespace toehold::editing
