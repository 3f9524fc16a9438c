// The plate as a whole: its outline's corners, and another plate in its place.
#include "editing/edits.h"
#include "editing/edits/result.h"
#include "editing/parts/anchor_places.h"
#include "editing/parts/holes.h"
#include "editing/parts/measures.h"
#include "editing/parts/outline_shape.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::editing {
namespace {

using model::BaseDetail;
using model::Position;

constexpr std::size_t most_corners = 400;  ///< of a plate, as `model::validate` has it

double distance_to_side(Position at, Position from, Position to) {
    const double dx = to.x_in - from.x_in, dy = to.y_in - from.y_in;
    const double squared = dx * dx + dy * dy;
    const double along = squared > 0.0 ? ((at.x_in - from.x_in) * dx + (at.y_in - from.y_in) * dy) / squared : 0.0;
    const double part = std::clamp(along, 0.0, 1.0);
    return std::hypot(at.x_in - from.x_in - part * dx, at.y_in - from.y_in - part * dy);
}

std::size_t nearest_side(const std::vector<Position>& corners, Position at) {
    std::size_t nearest = 0;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t side = 0; side < corners.size(); ++side) {
        const double away = distance_to_side(at, corners[side], corners[(side + 1) % corners.size()]);
        if (!(away < least)) continue;
        least = away;
        nearest = side;
    }
    return nearest;
}

/// Holes of the new plate that no group would fill get the anchor of the last group: a hole left empty on purpose is
/// rarer than one forgotten.
void fill_every_hole(BaseDetail& detail) {
    if (on_deck(detail).anchors.empty()) return;
    for (const model::Hole& hole : on_deck(detail).plate.holes) {
        if (model::anchor_group(detail, hole.id) == nullptr) on_deck(detail).anchors.back().holes.push_back(hole.id);
    }
}

const Phrase no_outline = phrase("This post stands on no plate, so there is no outline to change.");

}  // namespace

Edit to_polygon(const BaseDetail& detail) {
    const model::Plate* const plate = shaped_plate(detail);
    if (plate == nullptr) return refused(detail, no_outline);
    if (std::holds_alternative<model::PolygonOutline>(plate->outline))
        return refused(detail, phrase("The outline's corners are free already."));
    BaseDetail after = detail;
    shaped_plate(after)->outline = as_polygon(plate->outline);
    own_plate(after);
    return done(std::move(after), phrase("Free the outline's corners"), {model::PartId{model::PartKind::plate}});
}

Edit add_corner(const BaseDetail& detail, Position at) {
    const model::Plate* const plate = shaped_plate(detail);
    if (plate == nullptr) return refused(detail, no_outline);
    if (!std::isfinite(at.x_in) || !std::isfinite(at.y_in)) return refused(detail, not_a_place());
    BaseDetail after = detail;
    model::PolygonOutline polygon = as_polygon(plate->outline);
    if (polygon.corners.size() >= most_corners)
        return refused(detail, phrase("The outline has as many corners as it may have."));
    const std::size_t side = polygon.corners.empty() ? 0 : nearest_side(polygon.corners, at) + 1;
    polygon.corners.insert(polygon.corners.begin() + static_cast<std::ptrdiff_t>(side), bounded(at));
    shaped_plate(after)->outline = std::move(polygon);
    own_plate(after);
    return done(std::move(after), phrase("Add a corner"), {model::PartId{model::PartKind::plate}});
}

Edit use_plate(const BaseDetail& detail, const model::Plate& stock) {
    if (shaped_plate(detail) == nullptr) return refused(detail, phrase("This post stands on no plate to replace."));
    if (on_deck(detail).plate == stock) return refused(detail, phrase("The base stands on this plate already."));
    BaseDetail after = detail;
    on_deck(after).plate = stock;
    own_plate(after);
    std::vector<std::string> gone;
    for (const model::Hole& hole : on_deck(detail).plate.holes) {
        if (find_hole(stock, hole.id) == nullptr) gone.push_back(hole.id);
    }
    forget_anchors(after, gone);
    if (on_deck(after).anchors.empty() && !on_deck(detail).anchors.empty()) {
        on_deck(after).anchors.push_back(on_deck(detail).anchors.front());
        on_deck(after).anchors.front().holes.clear();
    }
    fill_every_hole(after);
    return done(std::move(after), phrase("Use plate {}", stock.name.empty() ? stock.id : stock.name),
                {model::PartId{model::PartKind::plate}});
}

}  // namespace toehold::editing
