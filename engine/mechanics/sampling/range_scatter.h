#pragma once
// How much a few test results scatter, where only their least and largest were printed.

namespace toehold::mechanics {

/// Standard deviation from the range of 2 to 10 results: the range over d2, its mean for a normal quantity of standard
/// deviation 1 (2.326 for five; the constants of control charts, computed). Of five results it is right within a factor
/// of about 2. Throws std::invalid_argument outside 2 to 10 or on a range below 0.
[[nodiscard]] double deviation_of_range(double range, int results);

}  // namespace toehold::mechanics
