#pragma once
// From the bed's points on one mesh to those on another of the same plate.
#include "mechanics/flexible_plate/one_way_springs.h"

#include <optional>
#include <vector>

namespace toehold::mechanics {

/// For each of the points the nearest on the same rectangle of the bed among others; absent: none is on it.
[[nodiscard]] std::vector<std::optional<std::size_t>> nearest_points(const std::vector<BedPoint>& points,
                                                                     const std::vector<BedPoint>& others);

}  // namespace toehold::mechanics
