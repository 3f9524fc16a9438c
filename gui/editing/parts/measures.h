#pragma once
// What every length and place made by hand keeps to, so that no drag or edit yields a number that is none.
#include "drawing/scene/scene.h"
#include "model/plate.h"

#include <vector>

namespace toehold::editing {

/// No length made by hand is shorter, in; typed ones may be.
inline constexpr double shortest_length_in = 1.0 / 16.0;

/// Nearest that lies within the largest measure of any detail, in; 0 for what is no number.
[[nodiscard]] double bounded(double value_in);
/// At least `least_in` and within the largest measure; `least_in` for what is no number.
[[nodiscard]] double at_least(double value_in, double least_in);
[[nodiscard]] model::Position bounded(model::Position at);

[[nodiscard]] bool is_finite(drawing::Point at);
[[nodiscard]] inline drawing::Point point(model::Position at) { return {at.x_in, at.y_in}; }
[[nodiscard]] inline model::Position position(drawing::Point at) { return {at.x, at.y}; }

/// Of a polygon; positive where its corners run counter-clockwise.
[[nodiscard]] double signed_area(const std::vector<model::Position>& corners);

/// An angle of a slot, deg: the same direction, within what a detail takes (-360 to 360).
[[nodiscard]] double slot_angle(double angle_deg);

}  // namespace toehold::editing
