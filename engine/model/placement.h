#pragma once
// Where things land in plan: pure geometry on the model.
#include "model/member.h"
#include "model/plate.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

[[nodiscard]] PlanAxis other(PlanAxis axis);
[[nodiscard]] double coordinate_in(Position at, PlanAxis axis);

/// Plan rectangle of a member, in.
struct PlanRectangle {
    std::string id;
    double x_min_in = 0.0, x_max_in = 0.0, y_min_in = 0.0, y_max_in = 0.0;
};

[[nodiscard]] PlanRectangle plan(const Member& member);
[[nodiscard]] bool contains(const PlanRectangle& rectangle, Position point);
/// Members side by side may touch. Where one's end meets the other's face it may be cut as much too long as a gap there
/// may be wide.
[[nodiscard]] bool overlap(const Member& one, const Member& other);

/// The member a point lies over, with its distances to the edges of the piece it is in and to the member's ends.
struct Seat {
    std::size_t member = 0;  ///< number in `members(framing)`
    double edge_in = 0.0;    ///< to the nearer long side of its piece (a doubled member has a seam), across the grain
    double end_in = 0.0;     ///< to the nearer end, along the grain
};
/// Absent when the point lies over no member.
[[nodiscard]] std::optional<Seat> seat(const Framing& framing, Position point);

/// The outline as a closed polygon, counter-clockwise. Arcs become chords: a full circle has 720 sides and the
/// same area as the circle, so its second moment is within 3e-5 of exact.
[[nodiscard]] std::vector<Position> polygon(const Outline& outline);
/// The outline's size along the axis, in.
[[nodiscard]] double extent_in(const Outline& outline, PlanAxis axis);
/// Shortest distance from a point to the outline's edge, in; negative outside.
[[nodiscard]] double edge_distance_in(const Outline& outline, Position point);

}  // namespace toehold::model
