#include "resistance/steel/washer.h"

#include <algorithm>
#include <limits>

namespace toehold::resistance::steel {

double washer_limit_psi(const RoundWasher& washer, double available_psi) {
    const double b = 0.5 * washer.outside_in, h = 0.5 * washer.hole_in, a = 0.5 * washer.nut_in;
    if (b <= std::max(a, h)) return std::numeric_limits<double>::infinity();
    const double turns = 2.0 / 3.0 * (b * b * b - h * h * h) - (b * b - h * h) * a;
    if (!(turns > 0.0)) return std::numeric_limits<double>::infinity();
    const double plastic_lb = 0.25 * available_psi * washer.thickness_in * washer.thickness_in;
    return 2.0 * (b - h) * plastic_lb / turns;
}

double washer_reach_in(const RoundWasher& washer, double available_psi, double pressure_psi) {
    if (washer_limit_psi(washer, available_psi) >= pressure_psi) return washer.outside_in;
    // The limit falls as the overhang grows; halved until the last digit.
    RoundWasher part = washer;
    double within_in = std::max(washer.nut_in, washer.hole_in), beyond_in = washer.outside_in;
    for (int round = 0; round < 60; ++round) {
        part.outside_in = 0.5 * (within_in + beyond_in);
        (washer_limit_psi(part, available_psi) >= pressure_psi ? within_in : beyond_in) = part.outside_in;
    }
    return within_in;
}

}  // namespace toehold::resistance::steel
