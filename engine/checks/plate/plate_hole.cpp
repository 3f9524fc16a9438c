#include "checks/plate/plate_hole.h"

#include "model/placement.h"
#include "model/segment.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <stdexcept>

namespace toehold::checks {
namespace {

/// The hole is this segment, a point for a round hole, grown by the radius.
struct Core {
    model::Segment segment;
    double radius_in = 0.0;
};

Core core(const model::Hole& hole) {
    if (const auto* round = std::get_if<model::RoundHole>(&hole.shape))
        return {{hole.center, hole.center}, 0.5 * round->diameter_in};
    const auto& slot = std::get<model::Slot>(hole.shape);
    const double angle = slot.angle_deg * std::numbers::pi / 180.0;
    const double half = 0.5 * (slot.length_in - slot.width_in);
    const double dx = half * std::cos(angle);
    const double dy = half * std::sin(angle);
    return {{{hole.center.x_in - dx, hole.center.y_in - dy}, {hole.center.x_in + dx, hole.center.y_in + dy}},
            0.5 * slot.width_in};
}

}  // namespace

double clear_edge_in(const model::Plate& plate, const model::Hole& hole) {
    const Core inner = core(hole);
    double distance = std::numeric_limits<double>::infinity();
    for (const model::Segment& side : model::sides(model::polygon(plate.outline)))
        distance = std::min(distance, model::distance_in(inner.segment, side));
    const bool inside = model::edge_distance_in(plate.outline, hole.center) > 0.0;
    return (inside ? distance : -distance) - inner.radius_in;
}

const model::Hole& hole_of(const model::Plate& plate, const std::string& id) {
    const auto found =
        std::find_if(plate.holes.begin(), plate.holes.end(), [&](const model::Hole& hole) { return hole.id == id; });
    if (found == plate.holes.end()) throw std::logic_error("the plate has no hole " + id);
    return *found;
}

}  // namespace toehold::checks
