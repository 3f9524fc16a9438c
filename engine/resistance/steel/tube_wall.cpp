#include "resistance/steel/tube_wall.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::resistance::steel {

double pressed_wall_lb(double width_in, double wall_in, double spot_diameter_in, double yield_psi) {
    constexpr double widest = 0.85;
    const double of_spot = std::min(spot_diameter_in / width_in, widest);
    const double of_square = 0.5 * std::sqrt(std::numbers::pi) * of_spot;
    const double unit_lb = yield_psi * wall_in * wall_in;
    const double straight = unit_lb / (1.0 - of_square) * (2.0 * of_square + 4.0 * std::sqrt(1.0 - of_square));
    const double fan = std::numbers::pi * unit_lb / (1.0 - of_spot);
    return std::min(straight, fan);
}

}  // namespace toehold::resistance::steel
