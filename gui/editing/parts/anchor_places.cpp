#include "editing/parts/anchor_places.h"

#include "editing/parts/holes.h"
#include "editing/parts/measures.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace toehold::editing {
namespace {

using model::BaseDetail;
using model::Position;

constexpr double same_place_in = 1e-3;
/// Of a plate without any hole: over a 3/8 in anchor by 1/16 in (common practice).
constexpr double first_hole_in = 7.0 / 16.0;

double distance_in(Position a, Position b) { return std::hypot(a.x_in - b.x_in, a.y_in - b.y_in); }

Position on_face(const model::SidePlace& place) { return {place.x_in, -place.below_top_in}; }

void put_on_face(model::SidePlace& place, Position at) {
    place.x_in = bounded(at.x_in);
    place.below_top_in = at_least(-at.y_in, shortest_length_in);
}

model::SidePlace* find_side_place(BaseDetail& detail, const std::string& id) {
    std::vector<model::SidePlace>& places = on_side(detail).places;
    const auto found =
        std::find_if(places.begin(), places.end(), [&](const model::SidePlace& place) { return place.id == id; });
    return found == places.end() ? nullptr : &*found;
}

bool is_taken(const BaseDetail& detail, const std::string& id) {
    if (anchor_place(detail, id)) return true;
    const auto* const side = std::get_if<model::SideFastened>(&detail.mount);
    return side != nullptr && std::any_of(side->ties.begin(), side->ties.end(),
                                          [&](const model::TensionTie& tie) { return tie.id == id; });
}

/// Of the group that names `like`; one that stands for all others needs no name.
void join_group(BaseDetail& detail, const std::string& id, const std::string& like) {
    for (model::AnchorGroup& group : model::anchor_groups(detail)) {
        if (std::find(group.holes.begin(), group.holes.end(), like) == group.holes.end()) continue;
        group.holes.push_back(id);
        return;
    }
}

}  // namespace

std::vector<AnchorPlace> places_of_anchors(const BaseDetail& detail) {
    std::vector<AnchorPlace> places;
    if (const model::Plate* const plate = shaped_plate(detail)) {
        for (const model::Hole& hole : plate->holes) places.push_back({hole.id, hole.center});
    } else {
        for (const model::SidePlace& place : on_side(detail).places) places.push_back({place.id, on_face(place)});
    }
    return places;
}

std::optional<Position> anchor_place(const BaseDetail& detail, const std::string& id) {
    for (const AnchorPlace& place : places_of_anchors(detail)) {
        if (place.id == id) return place.at;
    }
    return std::nullopt;
}

std::vector<std::string> anchors_among(const BaseDetail& detail, const std::vector<model::PartId>& parts) {
    std::vector<std::string> ids;
    for (const AnchorPlace& place : places_of_anchors(detail)) {
        if (model::contains(parts, model::anchor_part(place.id))) ids.push_back(place.id);
    }
    return ids;
}

std::string nearest_anchor(const BaseDetail& detail, Position at) {
    std::string id;
    double least = std::numeric_limits<double>::infinity();
    for (const AnchorPlace& place : places_of_anchors(detail)) {
        const double away = distance_in(place.at, at);
        if (!(away < least)) continue;
        least = away;
        id = place.id;
    }
    return id;
}

bool anchor_stands_at(const BaseDetail& detail, Position at) {
    const std::vector<AnchorPlace> places = places_of_anchors(detail);
    return std::any_of(places.begin(), places.end(),
                       [&](const AnchorPlace& place) { return distance_in(place.at, at) < same_place_in; });
}

std::string free_anchor_id(const BaseDetail& detail) {
    constexpr int letters = 26;
    for (int number = 0;; ++number) {
        std::string id;
        for (int rest = number; rest >= 0; rest = rest / letters - 1)
            id.insert(id.begin(), static_cast<char>('A' + rest % letters));
        if (!is_taken(detail, id)) return id;
    }
}

void put_anchor(BaseDetail& detail, const std::string& id, Position at) {
    if (model::Plate* const plate = shaped_plate(detail)) {
        model::Hole* const hole = find_hole(*plate, id);
        if (hole == nullptr) return;
        hole->center = bounded(at);
        own_plate(detail);
    } else if (model::SidePlace* const place = find_side_place(detail, id)) {
        put_on_face(*place, at);
        hang_ties(on_side(detail));
    }
}

std::string copy_anchor(BaseDetail& detail, const std::string& like, Position at) {
    std::string id = free_anchor_id(detail);
    join_group(detail, id, like);
    if (model::Plate* const plate = shaped_plate(detail)) {
        const model::Hole* const original = find_hole(*plate, like);
        model::Hole hole =
            original == nullptr ? model::Hole{{}, {}, model::RoundHole{first_hole_in}} : model::Hole(*original);
        hole.id = id;
        plate->holes.push_back(std::move(hole));
    } else {
        on_side(detail).places.push_back({id, 0.0, 0.0});
    }
    put_anchor(detail, id, at);
    return id;
}

void erase_anchors(BaseDetail& detail, const std::vector<std::string>& ids) {
    if (ids.empty()) return;
    const auto is_gone = [&](const auto& one) { return std::find(ids.begin(), ids.end(), one.id) != ids.end(); };
    if (model::Plate* const plate = shaped_plate(detail)) {
        std::erase_if(plate->holes, is_gone);
        own_plate(detail);
    } else {
        std::erase_if(on_side(detail).places, is_gone);
        for (model::TensionTie& tie : on_side(detail).ties) {
            if (std::find(ids.begin(), ids.end(), tie.bolt) != ids.end()) tie.bolt.clear();
        }
    }
    forget_anchors(detail, ids);
}

void hang_ties(model::SideFastened& mount) {
    for (model::TensionTie& tie : mount.ties) {
        const auto place = std::find_if(mount.places.begin(), mount.places.end(),
                                        [&](const model::SidePlace& one) { return one.id == tie.bolt; });
        if (place == mount.places.end()) continue;
        tie.x_in = place->x_in;
        tie.below_top_in = place->below_top_in;
    }
}

Position anchor_step(const BaseDetail& detail, const model::Place& step) {
    if (shaped_plate(detail) != nullptr) return {step.x_in, step.y_in};
    return {step.x_in, step.z_in};
}

const model::Plate* shaped_plate(const BaseDetail& detail) {
    const auto* const mount = std::get_if<model::PlateOnDeck>(&detail.mount);
    return mount == nullptr ? nullptr : &mount->plate;
}

model::Plate* shaped_plate(BaseDetail& detail) {
    return const_cast<model::Plate*>(shaped_plate(std::as_const(detail)));
}

}  // namespace toehold::editing
