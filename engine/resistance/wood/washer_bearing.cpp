#include "resistance/wood/washer_bearing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::resistance {
namespace {

double circle_area_in2(double diameter_in) { return 0.25 * std::numbers::pi * diameter_in * diameter_in; }

double evenly_on_wood_in(double extent_in, double clearance_in) {
    return std::max(std::min(extent_in, 2.0 * clearance_in), 0.0);
}

}  // namespace

double bolt_hole_in_wood_in(double bolt_diameter_in) { return bolt_diameter_in + 1.0 / 16.0; }

BearingArea washer_bearing(double outside_diameter_in, double hole_diameter_in, const Clearance& clearance) {
    const double nearest_in = std::min(clearance.along_in, clearance.across_in);
    const double diameter_in = evenly_on_wood_in(outside_diameter_in, nearest_in);
    const double area_in2 = circle_area_in2(diameter_in) - circle_area_in2(hole_diameter_in);
    return {diameter_in, diameter_in, std::max(area_in2, 0.0)};
}

BearingArea plate_bearing(double along_in, double across_in, double hole_diameter_in, const Clearance& clearance) {
    const double length_in = evenly_on_wood_in(along_in, clearance.along_in);
    const double width_in = evenly_on_wood_in(across_in, clearance.across_in);
    const double area_in2 = length_in * width_in - circle_area_in2(hole_diameter_in);
    return {length_in, width_in, std::max(area_in2, 0.0)};
}

double plate_spread_in(double thickness_in, double available_psi, double pressure_psi) {
    return thickness_in * std::sqrt(available_psi / (3.0 * pressure_psi));
}

}  // namespace toehold::resistance
