#pragma once
// Demand over capacity where a check looks for its worst state: as `conclude` forms it.
#include <limits>

namespace toehold::checks {

/// Infinity where capacity is 0 and demand is not; 0 where neither is there.
[[nodiscard]] inline double ratio(double demand, double capacity) {
    constexpr double nothing = 1e-9;
    if (capacity > 0.0) return demand / capacity;
    return demand > nothing ? std::numeric_limits<double>::infinity() : 0.0;
}

}  // namespace toehold::checks
