#pragma once
// Which side of a foot a view sees at its left and its right.
#include "model/place.h"
#include "model/post.h"

namespace toehold::model {

/// Whether the side at the axis's positive (`sign` > 0) or negative end is among them.
[[nodiscard]] constexpr bool has_side(const FootSides& sides, PlanAxis along, double sign) {
    if (along == PlanAxis::x) return sign > 0.0 ? sides.right : sides.left;
    return sign > 0.0 ? sides.outward : sides.inward;
}

}  // namespace toehold::model
