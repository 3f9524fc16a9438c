#include "resistance/wood/lead_hole.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <stdexcept>

namespace toehold::resistance {
namespace {

constexpr double dense = 0.6, light = 0.5;

void need_positive(double value, const char* what) {
    if (!(value > 0.0) || !std::isfinite(value)) throw std::invalid_argument(what);
}

/// The multiple of `step` inside the range that is nearest to its middle, the smaller of two as near.
std::optional<double> nearest_inside(double low, double high, double step) {
    constexpr double slack = 1e-9;
    const double middle = 0.5 * (low + high);
    const double first = std::ceil(low / step - slack), last = std::floor(high / step + slack);
    if (first > last) return std::nullopt;
    const double nearest = std::ceil(middle / step - 0.5 - slack);
    return step * std::clamp(nearest, first, last);
}

double customary_bit(double low, double high, const std::array<double, 3>& steps) {
    need_positive(low, "a bit is wider than 0");
    need_positive(high, "a bit is wider than 0");
    if (low > high) throw std::invalid_argument("the least bit is no wider than the widest");
    for (const double step : steps) {
        if (const auto bit = nearest_inside(low, high, step)) return *bit;
    }
    return std::max(std::floor(0.5 * (low + high) / steps.back()), 1.0) * steps.back();
}

}  // namespace

LagLeadHole lag_screw_lead_hole(double diameter_in, double specific_gravity) {
    need_positive(diameter_in, "a lag screw's diameter is above 0");
    need_positive(specific_gravity, "a specific gravity is above 0");
    if (specific_gravity > dense) return {diameter_in, 0.65 * diameter_in, 0.85 * diameter_in};
    if (specific_gravity > light) return {diameter_in, 0.60 * diameter_in, 0.75 * diameter_in};
    return {diameter_in, 0.40 * diameter_in, 0.70 * diameter_in};
}

bool lag_screw_may_go_without_lead_hole(double diameter_in, double specific_gravity) {
    need_positive(diameter_in, "a lag screw's diameter is above 0");
    need_positive(specific_gravity, "a specific gravity is above 0");
    return diameter_in <= 0.375 && specific_gravity <= light;
}

WoodScrewLeadHole wood_screw_lead_hole(double diameter_in, double root_diameter_in, double specific_gravity) {
    need_positive(diameter_in, "a wood screw's diameter is above 0");
    need_positive(root_diameter_in, "a wood screw's root diameter is above 0");
    need_positive(specific_gravity, "a specific gravity is above 0");
    if (root_diameter_in > diameter_in) throw std::invalid_argument("a thread's root is no wider than the screw");
    if (specific_gravity > dense) return {diameter_in, 0.90 * root_diameter_in, root_diameter_in, true};
    return {0.875 * diameter_in, 0.70 * root_diameter_in, 0.875 * root_diameter_in, specific_gravity > light};
}

double customary_bit_in(double low_in, double high_in) {
    return customary_bit(low_in, high_in, {1.0 / 16, 1.0 / 32, 1.0 / 64});
}

double customary_bit_mm(double low_in, double high_in) {
    constexpr double mm_per_in = 25.4;
    return customary_bit(mm_per_in * low_in, mm_per_in * high_in, {1.0, 0.5, 0.1});
}

}  // namespace toehold::resistance
