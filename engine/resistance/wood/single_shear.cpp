#include "resistance/wood/single_shear.h"

#include "resistance/wood/dowel_properties.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace toehold::resistance {
namespace {

constexpr double tip_diameters = 2.0;
constexpr double least_penetration_diameters = 6.0;

double penetration_in(const WoodToWood& connection) {
    const double beyond_side_in = connection.length_in - connection.side_thickness_in;
    const double limit_in = connection.main_thickness_in > 0.0 ? connection.main_thickness_in : beyond_side_in;
    return std::max(0.0, std::min(beyond_side_in, limit_in));
}

DowelConnection dowel(const WoodToWood& connection, double main_bearing_in) {
    const double main_angle_rad = connection.main_end_grain ? 0.5 * std::numbers::pi : connection.main_angle_rad;
    DowelConnection result;
    result.diameter_in = connection.root_diameter_in > 0.0 ? connection.root_diameter_in : connection.diameter_in;
    result.bending_yield_psi = connection.bending_yield_psi > 0.0 ? connection.bending_yield_psi
                                                                  : nail_bending_yield_psi(connection.diameter_in);
    result.main_bearing_in = main_bearing_in;
    result.side_bearing_in = connection.side_thickness_in;
    result.main_bearing_psi =
        dowel_bearing_psi(connection.main_specific_gravity, connection.diameter_in, main_angle_rad);
    result.side_bearing_psi =
        dowel_bearing_psi(connection.side_specific_gravity, connection.diameter_in, connection.side_angle_rad);
    return result;
}

}  // namespace

SingleShear single_shear_value(const WoodToWood& connection) {
    if (!(connection.diameter_in > 0.0 && connection.length_in > 0.0 && connection.side_thickness_in > 0.0)) {
        throw std::invalid_argument("nail or screw without diameter, length or side member");
    }
    SingleShear result;
    result.penetration_in = penetration_in(connection);
    result.minimum_penetration_in = least_penetration_diameters * connection.diameter_in;
    result.main_bearing_in = std::max(0.0, result.penetration_in - 0.5 * tip_diameters * connection.diameter_in);
    if (!units::at_least(result.penetration_in, result.minimum_penetration_in)) return result;

    const DowelConnection equations = dowel(connection, result.main_bearing_in);
    const double angle_rad = connection.main_end_grain ? 0.5 * std::numbers::pi
                                                       : std::max(connection.side_angle_rad, connection.main_angle_rad);
    const ModeValue least =
        governing(single_shear(equations, reduction_terms(connection.diameter_in, equations.diameter_in, angle_rad)));
    result.value_lb = least.value_lb;
    result.mode = least.mode;
    return result;
}

ToeNailPlace toe_nail_place(double length_in) {
    constexpr double slant_rad = std::numbers::pi / 6.0;
    const double side_in = length_in / 3.0;
    return {side_in, length_in * std::cos(slant_rad) - side_in, side_in * std::tan(slant_rad)};
}

}  // namespace toehold::resistance
