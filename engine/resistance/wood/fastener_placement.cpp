#include "resistance/wood/fastener_placement.h"

#include <algorithm>

namespace toehold::resistance {

double edge_loaded_along_in(double diameter_in, double length_in_wood_in, double rows_apart_in) {
    const double least_in = 1.5 * diameter_in;
    return length_in_wood_in > 6.0 * diameter_in ? std::max(least_in, 0.5 * rows_apart_in) : least_in;
}

double rows_loaded_across_in(double diameter_in, double length_in_wood_in) {
    return std::clamp((5.0 * length_in_wood_in + 10.0 * diameter_in) / 8.0, 2.5 * diameter_in, 5.0 * diameter_in);
}

}  // namespace toehold::resistance
