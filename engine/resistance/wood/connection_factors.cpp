#include "resistance/wood/connection_factors.h"

#include <algorithm>
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
    if (diameter_in < smallest_full_diameter_in) return 0.7;
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

}  // namespace toehold::resistance
