#pragma once
// A measured value against its limit. Lengths reach the engine through units and sums, and a limit met exactly must
// hold in whichever unit the file is written: 44.45 mm is 1.75 in, though the two doubles differ in the last digit.
// Every comparison of a distance, a depth, a length or a ratio with its limit goes through here.

#include <algorithm>
#include <cmath>

namespace toehold::units {

/// Relative to the larger of the two. A thousandth of what a shop can measure, and a thousand times what sums of
/// lengths lose.
inline constexpr double limit_tolerance = 1e-6;

[[nodiscard]] inline double limit_slack(double value, double limit) {
    return limit_tolerance * std::max(std::abs(value), std::abs(limit));
}
/// The value is no less than the limit.
[[nodiscard]] inline bool at_least(double value, double least) { return value >= least - limit_slack(value, least); }
/// The value is no more than the limit.
[[nodiscard]] inline bool at_most(double value, double most) { return value <= most + limit_slack(value, most); }

}  // namespace toehold::units
