#include "resistance/wood/pull_through.h"

#include <algorithm>
#include <numbers>

namespace toehold::resistance {

double head_pull_through_lb(double specific_gravity, double head_diameter_in, double net_thickness_in) {
    const double thickness_in = std::min(net_thickness_in, 2.5 * head_diameter_in);
    return 690.0 * std::numbers::pi * head_diameter_in * specific_gravity * specific_gravity * thickness_in;
}

}  // namespace toehold::resistance
