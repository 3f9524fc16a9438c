#pragma once
// The rigid plate's plane lift and what the bed presses on it, over a grid for drawing.
#include "demand/plate_on_deck/bed.h"
#include "mechanics/rigid_plate/rigid_plate.h"

namespace toehold::demand {

/// Cells cut to the plate, to each support and along the edge of contact: the pressure is exact everywhere, and steps
/// where a support ends. `direction_rad` of the result is left to the caller.
[[nodiscard]] DeflectedShape rigid_shape(const catalog::Resolved& resolved, const Bed& bed,
                                         const mechanics::RigidPlateSolution& solution);

}  // namespace toehold::demand
