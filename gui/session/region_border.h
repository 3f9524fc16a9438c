#pragma once
// The border of a region as lines without a break, each stopped by one limit.
#include "study/region.h"

#include <vector>

namespace toehold::session {

struct BorderStretch {
    study::Limit limit;
    std::vector<model::Position> places;  ///< from piece to piece; of a reach over one coordinate: one place
    double long_in = 0.0;                 ///< of a reach over one coordinate: 0
};

/// Longest first.
[[nodiscard]] std::vector<BorderStretch> stretches(const std::vector<study::RegionBorder>& border);

}  // namespace toehold::session
