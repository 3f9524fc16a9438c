#include "resistance/wood/dowel_bearing.h"

#include <cmath>
#include <stdexcept>

namespace toehold::resistance {
namespace {
constexpr double thick_dowel_in = 0.25;  // from here on the direction of the grain matters
constexpr double thickest_dowel_in = 1.0;
constexpr double densest = 1.2;
}  // namespace

double dowel_bearing_parallel_psi(double specific_gravity) { return 11200.0 * specific_gravity; }

double dowel_bearing_perpendicular_psi(double specific_gravity, double diameter_in) {
    return 6100.0 * std::pow(specific_gravity, 1.45) / std::sqrt(diameter_in);
}

double small_dowel_bearing_psi(double specific_gravity) { return 16600.0 * std::pow(specific_gravity, 1.84); }

double as_tabulated_psi(double bearing_psi) {
    constexpr double step_psi = 50.0;
    return step_psi * std::round(bearing_psi / step_psi);
}

double hankinson_psi(double parallel_psi, double perpendicular_psi, double angle_rad) {
    const double sine = std::sin(angle_rad);
    const double cosine = std::cos(angle_rad);
    return parallel_psi * perpendicular_psi / (parallel_psi * sine * sine + perpendicular_psi * cosine * cosine);
}

double dowel_bearing_psi(double specific_gravity, double diameter_in, double angle_rad) {
    if (!(specific_gravity > 0.0 && specific_gravity < densest)) throw std::invalid_argument("specific gravity");
    if (!(diameter_in > 0.0 && diameter_in <= thickest_dowel_in)) throw std::invalid_argument("dowel diameter");
    if (diameter_in < thick_dowel_in) return as_tabulated_psi(small_dowel_bearing_psi(specific_gravity));
    return hankinson_psi(as_tabulated_psi(dowel_bearing_parallel_psi(specific_gravity)),
                         as_tabulated_psi(dowel_bearing_perpendicular_psi(specific_gravity, diameter_in)), angle_rad);
}

double steel_dowel_bearing_psi(double ultimate_psi, double thickness_in) {
    constexpr double hot_rolled_from_in = 0.25;
    return (thickness_in >= hot_rolled_from_in ? 1.5 : 1.375) * ultimate_psi;
}

double aluminum_dowel_bearing_psi(double ultimate_psi) { return 1.25 * ultimate_psi; }

}  // namespace toehold::resistance
