#include "drawing/drawings.h"
#include "drawing/parts.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

/// Where a part stands in plan, as far as it has one place.
std::optional<model::Position> place_of(const model::BaseDetail& detail, const std::string& part) {
    const auto& holes = on_deck(detail).plate.holes;
    const auto hole =
        std::find_if(holes.begin(), holes.end(), [&](const model::Hole& one) { return anchor_part(one.id) == part; });
    if (hole != holes.end()) return hole->center;
    for (const model::Member& member : model::members(detail.framing)) {
        if (model::subject(member) != part) continue;
        const double middle = member.length_stated ? 0.5 * (member.from_in + member.to_in) : 0.0;
        return member.along == model::PlanAxis::x ? model::Position{middle, member.across_in}
                                                  : model::Position{member.across_in, middle};
    }
    return std::nullopt;
}

const model::Hole* nearest_hole(const std::vector<model::Hole>& holes, const std::optional<model::Position>& place) {
    if (holes.empty()) return nullptr;
    if (!place) return &holes.front();
    const auto distance = [&](const model::Hole& hole) {
        return std::hypot(hole.center.x_in - place->x_in, hole.center.y_in - place->y_in);
    };
    return &*std::min_element(holes.begin(), holes.end(), [&](const model::Hole& one, const model::Hole& other) {
        return distance(one) < distance(other);
    });
}

/// Across what the hole stands over; else across the first block; else outward.
model::PlanAxis direction(const model::Framing& framing, const model::Hole& hole) {
    model::PlanAxis grain = model::PlanAxis::x;
    if (const auto seat = model::seat(framing, hole.center)) {
        grain = model::member(framing, seat->member).along;
    } else if (!framing.blocks.empty()) {
        grain = framing.blocks.front().along;
    }
    return grain == model::PlanAxis::x ? model::PlanAxis::y : model::PlanAxis::x;
}

}  // namespace

SectionPlane section_plane(const model::BaseDetail& detail, const std::string& part) {
    const model::Hole* const hole = nearest_hole(on_deck(detail).plate.holes, place_of(detail, part));
    if (hole == nullptr) return {};
    const model::PlanAxis along = direction(detail.framing, *hole);
    return {along, along == model::PlanAxis::y ? hole->center.x_in : hole->center.y_in};
}

}  // namespace toehold::drawing
