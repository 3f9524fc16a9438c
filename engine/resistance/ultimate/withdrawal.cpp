#include "resistance/ultimate/withdrawal.h"

#include <cmath>

namespace toehold::resistance::ultimate {
namespace {

constexpr double nail_by_ovendry_volume = 6900.0, nail_by_volume_at_12_percent = 7850.0;

}  // namespace

double gravity_at_12_percent(double assigned_gravity) {
    return assigned_gravity * std::pow(nail_by_ovendry_volume / nail_by_volume_at_12_percent, 1.0 / nail_density_power);
}

double lag_mean_lb_per_in(double assigned_gravity, double diameter_in) {
    return 8100.0 * std::pow(gravity_at_12_percent(assigned_gravity), lag_density_power) * std::pow(diameter_in, 0.75);
}

double wood_screw_mean_lb_per_in(double assigned_gravity, double diameter_in) {
    return 15700.0 * std::pow(gravity_at_12_percent(assigned_gravity), wood_screw_density_power) * diameter_in;
}

double nail_mean_lb_per_in(double assigned_gravity, double diameter_in) {
    return nail_by_ovendry_volume * std::pow(assigned_gravity, nail_density_power) * diameter_in;
}

}  // namespace toehold::resistance::ultimate
