#pragma once
// A straight line of fasteners, evenly spaced, under a couple in its own plane: elastic group, common practice.

namespace toehold::checks {

/// Force on the outermost fastener for each lb in: r_max over the sum of r^2, 1/in. `spread_in` between the outermost
/// two, > 0; 0 for fewer than two fasteners, which resist no couple.
[[nodiscard]] inline double outermost_per_couple(int count, double spread_in) {
    if (count < 2 || !(spread_in > 0.0)) return 0.0;
    const double n = count;
    return 6.0 * (n - 1.0) / (spread_in * n * (n + 1.0));
}

}  // namespace toehold::checks
