#include "resistance/steel/bolt.h"

#include <algorithm>
#include <numbers>

namespace toehold::resistance::steel {
namespace {

constexpr double combined_limit = 1.3;

}  // namespace

double circle_area_in2(double diameter_in) { return 0.25 * std::numbers::pi * diameter_in * diameter_in; }

double threaded_tension_psi(double ultimate_psi) { return 0.75 * ultimate_psi; }

double threaded_shear_psi(double ultimate_psi) { return 0.450 * ultimate_psi; }

double combined_tension_psi(double nominal_tension_psi, double shear_psi, double available_shear_psi) {
    const double left_psi = nominal_tension_psi * (combined_limit - shear_psi / available_shear_psi);
    return std::clamp(left_psi, 0.0, nominal_tension_psi);
}

double combined_ratio(double tension_ratio, double shear_ratio) {
    return std::max({tension_ratio, shear_ratio, (tension_ratio + shear_ratio) / combined_limit});
}

}  // namespace toehold::resistance::steel
