#include "resistance/wood/connection_factors.h"

#include "resistance/wood/dowel_properties.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace toehold::resistance {

double connection_load_duration(double load_duration) {
    constexpr double largest = 1.6;
    if (!(load_duration >= 0.0)) throw std::invalid_argument("load duration factor below 0");
    return std::min(load_duration, largest);
}

double screw_withdrawal_wet_service(ConnectionMoisture moisture) {
    return moisture == ConnectionMoisture::wet ? 0.7 : 1.0;
}

double lateral_wet_service(ConnectionMoisture moisture, double diameter_in, bool single_row_or_single_fastener) {
    constexpr double smallest_full_diameter_in = 0.25;
    switch (moisture) {
        case ConnectionMoisture::dry:
            return 1.0;
        case ConnectionMoisture::wet:
            return 0.7;
        case ConnectionMoisture::dried_in_service:
            break;
    }
    if (!units::at_least(diameter_in, smallest_full_diameter_in)) return 0.7;
    return single_row_or_single_fastener ? 1.0 : 0.4;
}

double connection_temperature(ConnectionTemperature temperature, ConnectionMoisture moisture) {
    const bool wet = moisture == ConnectionMoisture::wet;
    switch (temperature) {
        case ConnectionTemperature::to_100F:
            return 1.0;
        case ConnectionTemperature::to_125F:
            return wet ? 0.7 : 0.8;
        case ConnectionTemperature::to_150F:
            return wet ? 0.5 : 0.7;
    }
    throw std::invalid_argument("temperature out of the table");
}

double wood_to_wood_slip_modulus_lb_per_in(double diameter_in) { return 180000.0 * std::pow(diameter_in, 1.5); }
double wood_to_metal_slip_modulus_lb_per_in(double diameter_in) { return 270000.0 * std::pow(diameter_in, 1.5); }

double group_factor(const FastenerRow& row) {
    if (row.count <= 1 || !units::at_least(row.diameter_in, thick_dowel_in)) return 1.0;
    const double main = row.main_axial_stiffness_lb;
    const double side = row.side_axial_stiffness_lb;
    if (!(main > 0.0 && side > 0.0 && row.spacing_in > 0.0 && row.slip_modulus_lb_per_in > 0.0)) {
        throw std::invalid_argument("row of fasteners without stiffness or spacing");
    }
    const double n = row.count;
    const double stiffness_ratio = std::min(main / side, side / main);
    const double u = 1.0 + row.slip_modulus_lb_per_in * 0.5 * row.spacing_in * (1.0 / main + 1.0 / side);
    const double m = u - std::sqrt(u * u - 1.0);
    const double m_n = std::pow(m, n);
    const double m_2n = m_n * m_n;
    const double even = n * ((1.0 + stiffness_ratio * m_n) * (1.0 + m) - 1.0 + m_2n);
    return std::min(1.0, m * (1.0 - m_2n) / even * (1.0 + stiffness_ratio) / (1.0 - m));
}

}  // namespace toehold::resistance
