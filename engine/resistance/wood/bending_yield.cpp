#include "resistance/wood/bending_yield.h"

#include <array>
#include <stdexcept>

namespace toehold::resistance {
namespace {

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
    constexpr double rounding_in = 1e-9;  // a diameter that came through another unit
    for (const Row& row : rows) {
        if (diameter_in <= row.to_diameter_in + rounding_in) return row.bending_yield_psi;
    }
    return thickest_psi;
}

}  // namespace

double nail_bending_yield_psi(double diameter_in) { return look_up(nail_rows, diameter_in); }
double lag_bending_yield_psi(double diameter_in) { return look_up(lag_rows, diameter_in); }

}  // namespace toehold::resistance
