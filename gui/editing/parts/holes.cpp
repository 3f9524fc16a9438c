#include "editing/parts/holes.h"

#include "editing/parts/measures.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::editing {
namespace {

constexpr double same_place_in = 1e-3;

double distance_in(model::Position a, model::Position b) { return std::hypot(a.x_in - b.x_in, a.y_in - b.y_in); }

}  // namespace

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

std::string nearest_hole(const model::Plate& plate, model::Position at) {
    std::string id;
    double least = std::numeric_limits<double>::infinity();
    for (const model::Hole& hole : plate.holes) {
        const double away = distance_in(hole.center, at);
        if (!(away < least)) continue;
        least = away;
        id = hole.id;
    }
    return id;
}

const model::Hole* hole_of(const model::BaseDetail& detail, const model::PartId& part) {
    return part.kind == model::PartKind::anchor ? find_hole(on_deck(detail).plate, part.id) : nullptr;
}

std::vector<std::string> holes_among(const model::BaseDetail& detail, const std::vector<model::PartId>& parts) {
    std::vector<std::string> ids;
    for (const model::Hole& hole : on_deck(detail).plate.holes) {
        if (model::contains(parts, model::anchor_part(hole.id))) ids.push_back(hole.id);
    }
    return ids;
}

std::string free_hole_id(const model::Plate& plate) {
    constexpr int letters = 26;
    for (int number = 0;; ++number) {
        std::string id;
        for (int rest = number; rest >= 0; rest = rest / letters - 1)
            id.insert(id.begin(), static_cast<char>('A' + rest % letters));
        if (find_hole(plate, id) == nullptr) return id;
    }
}

double width_in(const model::Hole& hole) {
    if (const auto* slot = std::get_if<model::Slot>(&hole.shape)) return slot->width_in;
    return std::get<model::RoundHole>(hole.shape).diameter_in;
}

bool hole_stands_at(const model::Plate& plate, model::Position at) {
    return std::any_of(plate.holes.begin(), plate.holes.end(),
                       [&](const model::Hole& hole) { return distance_in(hole.center, at) < same_place_in; });
}

std::string add_hole_like(model::BaseDetail& detail, model::Hole hole, const std::string& like) {
    hole.id = free_hole_id(on_deck(detail).plate);
    hole.center = bounded(hole.center);
    for (model::AnchorGroup& group : on_deck(detail).anchors) {
        if (std::find(group.holes.begin(), group.holes.end(), like) != group.holes.end()) {
            group.holes.push_back(hole.id);
            break;
        }
    }
    on_deck(detail).plate.holes.push_back(hole);
    own_plate(detail);
    return hole.id;
}

void forget_anchors(model::BaseDetail& detail, const std::vector<std::string>& holes) {
    const auto forgotten = [&](const std::string& id) {
        return std::find(holes.begin(), holes.end(), id) != holes.end();
    };
    std::vector<model::AnchorGroup> kept;
    for (model::AnchorGroup group : on_deck(detail).anchors) {
        const bool for_all_others = group.holes.empty();
        std::erase_if(group.holes, forgotten);
        if (for_all_others || !group.holes.empty()) kept.push_back(std::move(group));
    }
    on_deck(detail).anchors = std::move(kept);
}

void own_plate(model::BaseDetail& detail) { on_deck(detail).plate_reference.reset(); }

}  // namespace toehold::editing
