#include "editing/parts/holes.h"

#include "editing/parts/anchor_places.h"

#include <algorithm>
#include <utility>

namespace toehold::editing {

const model::Hole* find_hole(const model::Plate& plate, const std::string& id) {
    const auto found =
        std::find_if(plate.holes.begin(), plate.holes.end(), [&](const model::Hole& hole) { return hole.id == id; });
    return found == plate.holes.end() ? nullptr : &*found;
}

model::Hole* find_hole(model::Plate& plate, const std::string& id) {
    const auto found =
        std::find_if(plate.holes.begin(), plate.holes.end(), [&](const model::Hole& hole) { return hole.id == id; });
    return found == plate.holes.end() ? nullptr : &*found;
}

const model::Hole* hole_of(const model::BaseDetail& detail, const model::PartId& part) {
    const model::Plate* const plate = shaped_plate(detail);
    return plate != nullptr && part.kind == model::PartKind::anchor ? find_hole(*plate, part.id) : nullptr;
}

std::vector<std::string> holes_among(const model::BaseDetail& detail, const std::vector<model::PartId>& parts) {
    return shaped_plate(detail) == nullptr ? std::vector<std::string>{} : anchors_among(detail, parts);
}

double width_in(const model::Hole& hole) {
    if (const auto* slot = std::get_if<model::Slot>(&hole.shape)) return slot->width_in;
    return std::get<model::RoundHole>(hole.shape).diameter_in;
}

std::string add_hole_like(model::BaseDetail& detail, const model::Hole& hole, const std::string& like) {
    std::string id = copy_anchor(detail, like, hole.center);
    find_hole(on_deck(detail).plate, id)->shape = hole.shape;
    return id;
}

void forget_anchors(model::BaseDetail& detail, const std::vector<std::string>& holes) {
    const auto forgotten = [&](const std::string& id) {
        return std::find(holes.begin(), holes.end(), id) != holes.end();
    };
    std::vector<model::AnchorGroup> kept;
    for (model::AnchorGroup group : model::anchor_groups(detail)) {
        const bool for_all_others = group.holes.empty();
        std::erase_if(group.holes, forgotten);
        if (for_all_others || !group.holes.empty()) kept.push_back(std::move(group));
    }
    model::anchor_groups(detail) = std::move(kept);
}

void own_plate(model::BaseDetail& detail) {
    if (auto* const mount = std::get_if<model::PlateOnDeck>(&detail.mount)) mount->plate_reference.reset();
}

}  // namespace toehold::editing
