#include "editing/picked.h"

#include "editing/parts/anchor_places.h"
#include "editing/parts/holes.h"
#include "editing/parts/side_fasteners.h"
#include "model/placement.h"

#include <algorithm>
#include <limits>
#include <variant>

namespace toehold::editing {

std::vector<model::PartId> anchors_within(const model::BaseDetail& detail, drawing::Point one, drawing::Point other) {
    const auto [left, right] = std::minmax(one.x, other.x);
    const auto [low, high] = std::minmax(one.y, other.y);
    std::vector<model::PartId> parts;
    for (const AnchorPlace& place : places_of_anchors(detail)) {
        const model::Position& at = place.at;
        if (at.x_in >= left && at.x_in <= right && at.y_in >= low && at.y_in <= high)
            parts.push_back(model::anchor_part(place.id));
    }
    return parts;
}

std::vector<model::PartId> all_anchors(const model::BaseDetail& detail) {
    constexpr double everywhere = std::numeric_limits<double>::infinity();
    return anchors_within(detail, {-everywhere, -everywhere}, {everywhere, everywhere});
}

std::optional<model::Hole> hole_at(const model::BaseDetail& detail, const model::PartId& part) {
    const model::Hole* const hole = hole_of(detail, part);
    return hole == nullptr ? std::nullopt : std::optional(*hole);
}

std::optional<double> edge_distance_in(const model::BaseDetail& detail, const model::PartId& part) {
    const std::optional<model::Position> at =
        part.kind == model::PartKind::anchor ? anchor_place(detail, part.id) : std::nullopt;
    if (!at) return std::nullopt;
    const model::Plate* const plate = shaped_plate(detail);
    return plate != nullptr ? model::edge_distance_in(plate->outline, *at) : edge_distance_on_face(detail, *at);
}

bool corners_can_be_freed(const model::BaseDetail& detail) {
    const model::Plate* const plate = shaped_plate(detail);
    return plate != nullptr && !std::holds_alternative<model::PolygonOutline>(plate->outline);
}

}  // namespace toehold::editing
