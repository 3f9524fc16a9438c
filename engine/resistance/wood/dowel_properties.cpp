#include "resistance/wood/dowel_properties.h"

#include "units/limit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>

namespace toehold::resistance {
namespace {

constexpr double thickest_dowel_in = 1.0;
constexpr double densest = 1.2;

struct Row {
    double to_diameter_in;  // inclusive
    double bending_yield_psi;
};

constexpr double thickest_psi = 45000.0;
constexpr std::array nail_rows{Row{0.142, 100000.0}, Row{0.177, 90000.0}, Row{0.236, 80000.0}, Row{0.273, 70000.0},
                               Row{0.344, 60000.0}};
constexpr std::array lag_rows{Row{0.25, 70000.0}, Row{0.3125, 60000.0}};

template <class Rows>
double look_up(const Rows& rows, double diameter_in) {
    if (!(diameter_in > 0.0)) throw std::invalid_argument("fastener diameter");
    for (const Row& row : rows) {
        if (units::at_most(diameter_in, row.to_diameter_in)) return row.bending_yield_psi;
    }
    return thickest_psi;
}

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
    if (!units::at_least(diameter_in, thick_dowel_in))
        return as_tabulated_psi(small_dowel_bearing_psi(specific_gravity));
    return hankinson_psi(as_tabulated_psi(dowel_bearing_parallel_psi(specific_gravity)),
                         as_tabulated_psi(dowel_bearing_perpendicular_psi(specific_gravity, diameter_in)), angle_rad);
}

double steel_dowel_bearing_psi(double ultimate_psi, double thickness_in) {
    constexpr double hot_rolled_from_in = 0.25;
    return (thickness_in >= hot_rolled_from_in ? 1.5 : 1.375) * ultimate_psi;
}

double aluminum_dowel_bearing_psi(double ultimate_psi) { return 1.25 * ultimate_psi; }

double nail_bending_yield_psi(double diameter_in) { return look_up(nail_rows, diameter_in); }
double lag_bending_yield_psi(double diameter_in) { return look_up(lag_rows, diameter_in); }

double bolt_thread_length_in(double diameter_in, double length_in) {
    constexpr double short_bolt_in = 6.0;
    const double thread_in = 2.0 * diameter_in + (length_in <= short_bolt_in ? 0.25 : 0.5);
    return std::min(thread_in, length_in);
}

}  // namespace toehold::resistance
