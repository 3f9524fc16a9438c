#include "model/capsule.h"

#include <cmath>
#include <numbers>

namespace toehold::model {

Capsule capsule(const Hole& hole) {
    if (const auto* round = std::get_if<RoundHole>(&hole.shape))
        return {{hole.center, hole.center}, 0.5 * round->diameter_in};
    const Slot& slot = std::get<Slot>(hole.shape);
    const double half = 0.5 * (slot.length_in - slot.width_in);
    const double angle = slot.angle_deg * std::numbers::pi / 180.0;
    const double dx = half * std::cos(angle);
    const double dy = half * std::sin(angle);
    return {{{hole.center.x_in - dx, hole.center.y_in - dy}, {hole.center.x_in + dx, hole.center.y_in + dy}},
            0.5 * slot.width_in};
}

}  // namespace toehold::model
