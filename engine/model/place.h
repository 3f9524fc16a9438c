#pragma once
// Places in plan and in space. Axes: origin at the post's centroid on the plane the mount bears on; x along the rail,
// y outward, z up; inches.

namespace toehold::model {

enum class PlanAxis { x, y };

/// Seen from above.
struct Position {
    double x_in = 0.0;
    double y_in = 0.0;
    friend bool operator==(const Position&, const Position&) = default;
};

struct Place {
    double x_in = 0.0;
    double y_in = 0.0;
    double z_in = 0.0;  ///< 0 at the bearing plane
    friend bool operator==(const Place&, const Place&) = default;
};

[[nodiscard]] inline Position in_plan(const Place& place) { return {place.x_in, place.y_in}; }

/// A unit vector.
struct Direction {
    double x = 0.0;
    double y = 0.0;
    double z = 0.0;
    friend bool operator==(const Direction&, const Direction&) = default;
};

inline constexpr Direction straight_down{0.0, 0.0, -1.0};

}  // namespace toehold::model
