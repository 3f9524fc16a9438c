#include "resistance/steel/weld.h"

#include <algorithm>
#include <array>

namespace toehold::resistance::steel {

double throat_in(double leg_in) { return 0.707 * leg_in; }

double weld_metal_lb_per_in(double leg_in, double electrode_psi) { return 0.60 * electrode_psi * throat_in(leg_in); }

double groove_metal_lb_per_in(double throat_in, double electrode_psi) { return 0.60 * electrode_psi * throat_in; }

namespace {

constexpr double tolerance_in = 0.001;
constexpr double mm_per_in = 25.4;

/// Of Table J2.4: parts up to this thick.
struct LegRow {
    double thickness_in, leg_in;
    double thickness_mm, leg_mm;
};
constexpr double any_thickness = 1e9;
constexpr std::array<LegRow, 4> leg_rows{{{0.25, 0.125, 6.0, 3.0},
                                          {0.5, 0.1875, 13.0, 5.0},
                                          {0.75, 0.25, 19.0, 6.0},
                                          {any_thickness, 0.3125, any_thickness, 8.0}}};

double minimum_leg_mm(double thinner_part_mm) {
    for (const LegRow& row : leg_rows) {
        if (thinner_part_mm <= row.thickness_mm + tolerance_in * mm_per_in) return row.leg_mm;
    }
    return leg_rows.back().leg_mm;
}

}  // namespace

double minimum_leg_in(double thinner_part_in) {
    for (const LegRow& row : leg_rows) {
        if (thinner_part_in <= row.thickness_in + tolerance_in) return row.leg_in;
    }
    return leg_rows.back().leg_in;
}

bool is_minimum_leg(double leg_in, double thinner_part_in) {
    const double in_millimeters_in = minimum_leg_mm(thinner_part_in * mm_per_in) / mm_per_in;
    return leg_in >= std::min(minimum_leg_in(thinner_part_in), in_millimeters_in) - tolerance_in;
}

}  // namespace toehold::resistance::steel
