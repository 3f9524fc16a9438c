#include "resistance/steel/bolt.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace toehold::resistance::steel {
namespace {

constexpr double combined_limit = 1.3;

struct EdgeRow {
    double diameter_in;
    double edge_in;
};

// AISC 360-16 Table J3.4.
constexpr std::array<EdgeRow, 7> edge_rows = {
    {{0.5, 0.75}, {0.625, 0.875}, {0.75, 1.0}, {0.875, 1.125}, {1.0, 1.25}, {1.125, 1.5}, {1.25, 1.625}}};

/// What the table's oversize hole adds to a bolt from this diameter on.
struct OversizeRow {
    double diameter_in;
    double play_in;
};

// AISC 360-16 Table J3.3, from memory.
constexpr std::array<OversizeRow, 4> oversize_rows = {{{0.5, 0.125}, {0.625, 0.1875}, {1.0, 0.25}, {1.125, 0.3125}}};

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

double minimum_edge_distance_in(double diameter_in) {
    if (diameter_in < edge_rows.front().diameter_in) return 1.5 * diameter_in;
    for (const EdgeRow& row : edge_rows) {
        if (diameter_in <= row.diameter_in) return row.edge_in;
    }
    return std::max(1.25 * diameter_in, edge_rows.back().edge_in);
}

double standard_hole_in(double diameter_in) { return diameter_in + 0.0625; }

double drilled_in(double hole_in) {
    constexpr double drills_per_in = 64.0, rounding_in = 1e-6;
    return std::ceil((hole_in - rounding_in) * drills_per_in) / drills_per_in;
}

double largest_standard_hole_in(double diameter_in) {
    return diameter_in < 1.0 ? standard_hole_in(diameter_in) : diameter_in + 0.125;
}

double oversize_hole_in(double diameter_in) {
    double play_in = oversize_rows.front().play_in;
    for (const OversizeRow& row : oversize_rows) {
        if (diameter_in >= row.diameter_in) play_in = row.play_in;
    }
    return diameter_in + play_in;
}

double hole_bearing_lb(double clear_in, double diameter_in, double thickness_in, double ultimate_psi) {
    return std::min(1.2 * clear_in, 2.4 * diameter_in) * thickness_in * ultimate_psi;
}

}  // namespace toehold::resistance::steel
