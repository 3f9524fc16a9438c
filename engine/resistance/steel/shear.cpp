#include "resistance/steel/shear.h"

#include <algorithm>
#include <numbers>

namespace toehold::resistance::steel {

double tube_shear_lb(const TubeShape& tube, double wall_in, bool along_x, double yield_psi) {
    if (tube.round) return 0.5 * 0.60 * yield_psi * round_section(tube.width_in, wall_in).area_in2;
    const double side_in = (along_x ? tube.width_in : tube.depth_in) - 3.0 * wall_in;
    return 0.60 * yield_psi * 2.0 * std::max(0.0, side_in) * wall_in;
}

double bar_shear_lb(const TubeShape& bar, double yield_psi) {
    if (bar.round) return 0.60 * yield_psi * 0.25 * std::numbers::pi * bar.width_in * bar.width_in * 0.75;
    return 0.60 * yield_psi * bar.width_in * bar.depth_in / 1.5;
}

double side_walls_lb_per_in(double wall_in, double yield_psi) { return 2.0 * yield_psi * wall_in; }

}  // namespace toehold::resistance::steel
