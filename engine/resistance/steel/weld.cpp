#include "resistance/steel/weld.h"

#include <algorithm>
#include <array>
#include <span>

namespace toehold::resistance::steel {

double throat_in(double leg_in) { return 0.707 * leg_in; }

double weld_metal_lb_per_in(double leg_in, double electrode_psi) { return 0.60 * electrode_psi * throat_in(leg_in); }

double groove_metal_lb_per_in(double throat_in, double electrode_psi) { return 0.60 * electrode_psi * throat_in; }

namespace {

constexpr double tolerance_in = 0.001;
constexpr double mm_per_in = 25.4;

/// Of Tables J2.3 and J2.4: the least size where the thinner part is up to this thick.
struct SizeRow {
    double thickness_in, size_in;
    double thickness_mm, size_mm;
};
constexpr double any_thickness = 1e9;
constexpr std::array<SizeRow, 4> leg_rows{{{0.25, 0.125, 6.0, 3.0},
                                           {0.5, 0.1875, 13.0, 5.0},
                                           {0.75, 0.25, 19.0, 6.0},
                                           {any_thickness, 0.3125, any_thickness, 8.0}}};
constexpr std::array<SizeRow, 7> throat_rows{{{0.25, 0.125, 6.0, 3.0},
                                              {0.5, 0.1875, 13.0, 5.0},
                                              {0.75, 0.25, 19.0, 6.0},
                                              {1.5, 0.3125, 38.0, 8.0},
                                              {2.25, 0.375, 57.0, 10.0},
                                              {6.0, 0.5, 150.0, 13.0},
                                              {any_thickness, 0.625, any_thickness, 16.0}}};

double least_in(std::span<const SizeRow> rows, double thinner_part_in) {
    for (const SizeRow& row : rows) {
        if (thinner_part_in <= row.thickness_in + tolerance_in) return row.size_in;
    }
    return rows.back().size_in;
}

double least_mm(std::span<const SizeRow> rows, double thinner_part_in) {
    for (const SizeRow& row : rows) {
        if (thinner_part_in * mm_per_in <= row.thickness_mm + tolerance_in * mm_per_in) return row.size_mm;
    }
    return rows.back().size_mm;
}

/// By either column.
bool is_enough(std::span<const SizeRow> rows, double size_in, double thinner_part_in) {
    const double least = std::min(least_in(rows, thinner_part_in), least_mm(rows, thinner_part_in) / mm_per_in);
    return size_in >= least - tolerance_in;
}

}  // namespace

double minimum_leg_in(double thinner_part_in) { return least_in(leg_rows, thinner_part_in); }
bool is_minimum_leg(double leg_in, double thinner_part_in) { return is_enough(leg_rows, leg_in, thinner_part_in); }

double minimum_throat_in(double thinner_part_in) { return least_in(throat_rows, thinner_part_in); }
bool is_minimum_throat(double throat_in, double thinner_part_in) {
    return is_enough(throat_rows, throat_in, thinner_part_in);
}

}  // namespace toehold::resistance::steel
