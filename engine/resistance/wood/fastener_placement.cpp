#include "resistance/wood/fastener_placement.h"

#include <algorithm>

namespace toehold::resistance {

double rows_loaded_across_in(double diameter_in, double length_in_wood_in) {
    return std::clamp((5.0 * length_in_wood_in + 10.0 * diameter_in) / 8.0, 2.5 * diameter_in, 5.0 * diameter_in);
}

}  // namespace toehold::resistance
