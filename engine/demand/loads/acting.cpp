// A push in any direction and a wind across the rail, either way, as one push. For each direction of the moment there
// is one largest: with A the push's moment and B the wind's, A u(theta) + B y = m u(phi) gives
//   m = B |sin phi| + sqrt(A^2 - B^2 cos^2 phi),
// and none where the root is not real. The force that goes with it is the same sum of the two forces. Its direction
// differs from the moment's by a few degrees, which is left out: the anchors share shear equally. Directions are
// counted from the wind's axis, here +y.
#include "demand/demand.h"

#include <algorithm>
#include <cmath>

namespace toehold::demand {

ActingLoad acting_load(const LoadCase& load, double direction_rad) {
    ActingLoad together{load.push_lb, load.down_lb, load.height_in};
    if (load.wind_lb == 0.0) return together;
    const double live_lb_in = load.push_lb * load.height_in;
    const double wind_lb_in = load.wind_lb * load.wind_height_in;
    const double from_axis_rad = direction_rad - load.wind_axis_rad;
    const double across = std::abs(std::cos(from_axis_rad)), along = std::sin(from_axis_rad);
    constexpr double rounding = 1e-9;
    double root = live_lb_in * live_lb_in - std::pow(wind_lb_in * along, 2);
    if (root < -rounding * wind_lb_in * wind_lb_in) {
        together.push_lb = 0.0;
        return together;
    }
    root = std::sqrt(std::max(0.0, root));
    const double moment_lb_in = wind_lb_in * across + root;
    // The live push that this asks for, in parts along and across the rail.
    const double live_in = load.height_in > 0.0 ? 1.0 / load.height_in : 0.0;
    const double along_lb = moment_lb_in * along * live_in;
    const double across_lb = (moment_lb_in * across - wind_lb_in) * live_in + load.wind_lb;
    together.push_lb = std::hypot(along_lb, across_lb);
    if (together.push_lb > 0.0) together.height_in = moment_lb_in / together.push_lb;
    return together;
}

ActingLoad acting_load(const Demand& demand, const State& state) {
    return acting_load(demand.cases.at(state.load_case), state.direction_rad);
}

}  // namespace toehold::demand
