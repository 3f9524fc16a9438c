#include "resistance/wood/drilled_section.h"

#include <algorithm>
#include <cmath>

namespace toehold::resistance {

NetModuli net_moduli(double width_in, double depth_in, std::span<const DrilledHole> holes) {
    double breadth_in = width_in;
    double over_depth_in3 = std::pow(width_in, 3) / 12.0;  // second moment about y, over the depth
    for (const DrilledHole& hole : holes) {
        breadth_in -= hole.diameter_in;
        over_depth_in3 -= std::pow(hole.diameter_in, 3) / 12.0 + hole.diameter_in * hole.across_in * hole.across_in;
    }
    return {std::max(0.0, breadth_in) * depth_in * depth_in / 6.0,
            std::max(0.0, over_depth_in3) * depth_in / (0.5 * width_in)};
}

}  // namespace toehold::resistance
