#pragma once
// Distances between points and straight segments in plan, in.
#include "model/plate.h"

#include <vector>

namespace toehold::model {

struct Segment {
    Position from, to;
};

[[nodiscard]] double distance_in(Position point, const Segment& segment);
[[nodiscard]] bool cross(const Segment& a, const Segment& b);
/// 0 where they cross.
[[nodiscard]] double distance_in(const Segment& a, const Segment& b);
/// The sides of a closed polygon.
[[nodiscard]] std::vector<Segment> sides(const std::vector<Position>& corners);

}  // namespace toehold::model
