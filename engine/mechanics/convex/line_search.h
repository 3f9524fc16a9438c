#pragma once
// How far to go along a line on which a convex energy falls at its start.
#include <functional>

namespace toehold::mechanics {

/// The energy's slope along the line, a given step from its start; it never falls.
using SlopeAlong = std::function<double(double step)>;

/// The step to (nearly) the lowest place: a full step that brings the slope below half is kept as it is, so that near
/// the answer Newton's own steps converge quadratically; else to below a tenth. The last step tried where the line
/// falls without end. `slope_at_start` < 0. `most_places`: tried at most, of doubling and of narrowing each.
[[nodiscard]] double step_down(const SlopeAlong& slope_along, double slope_at_start, int most_places);

}  // namespace toehold::mechanics
