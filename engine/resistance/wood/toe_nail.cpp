#include "resistance/wood/toe_nail.h"

#include <cmath>
#include <numbers>

namespace toehold::resistance {

ToeNailPlace toe_nail_place(double length_in) {
    constexpr double slant_rad = std::numbers::pi / 6.0;
    const double side_in = length_in / 3.0;
    return {side_in, length_in * std::cos(slant_rad) - side_in, side_in * std::tan(slant_rad)};
}

}  // namespace toehold::resistance
