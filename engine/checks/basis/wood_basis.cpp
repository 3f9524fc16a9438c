#include "checks/basis/wood_basis.h"

#include <utility>

namespace toehold::checks {
namespace {

constexpr double live_load_factor = 1.6;  // ASCE 7-16 2.3.1, live load

void apply(Adjusted& adjusted, Step factor) {
    adjusted.value *= factor.value;
    adjusted.steps.push_back(std::move(factor));
}

const char* stated(bool in_file) { return in_file ? "given" : "default"; }

/// CD under ASD; KF, phi and lambda under LRFD.
void apply_method(Adjusted& adjusted, const model::Basis& basis) {
    if (basis.method == model::Method::asd) {
        apply(adjusted, {"C_D", "load duration factor, at most 1.6", stated(basis.load_duration.has_value()),
                         resistance::connection_load_duration(model::load_duration(basis)), "", "NDS 2018 11.3.2"});
        return;
    }
    apply(adjusted, {"K_F", "format conversion factor", "connections", resistance::connection_format_conversion(), "",
                     "NDS 2018 Table 11.3.1"});
    apply(adjusted, {"phi", "resistance factor", "connections", resistance::connection_resistance_factor(), "",
                     "NDS 2018 Table 11.3.1"});
    apply(adjusted, {"lambda", "time effect factor", stated(basis.time_effect.has_value()), model::time_effect(basis),
                     "", "NDS 2018 Table N3"});
}

void apply_temperature(Adjusted& adjusted, const model::Basis& basis) {
    apply(adjusted, {"C_t", "temperature factor", stated(basis.temperature.has_value()),
                     resistance::connection_temperature(connection_temperature(basis), connection_moisture(basis)), "",
                     "NDS 2018 Table 11.3.4"});
}

}  // namespace

resistance::ConnectionMoisture connection_moisture(const model::Basis& basis) {
    using resistance::ConnectionMoisture;
    switch (model::moisture(basis)) {
        case model::Moisture::dry:
            return ConnectionMoisture::dry;
        case model::Moisture::dried_in_service:
            return ConnectionMoisture::dried_in_service;
        case model::Moisture::wet:
            break;
    }
    return ConnectionMoisture::wet;
}

resistance::ConnectionTemperature connection_temperature(const model::Basis& basis) {
    using resistance::ConnectionTemperature;
    switch (model::temperature(basis)) {
        case model::Temperature::to_100F:
            return ConnectionTemperature::to_100F;
        case model::Temperature::to_125F:
            return ConnectionTemperature::to_125F;
        case model::Temperature::to_150F:
            break;
    }
    return ConnectionTemperature::to_150F;
}

Adjusted adjust_withdrawal(double reference_lb, const model::Basis& basis) {
    Adjusted adjusted{reference_lb, {}};
    apply_method(adjusted, basis);
    apply(adjusted,
          {"C_M", "wet service factor, withdrawal", stated(basis.moisture.has_value()),
           resistance::screw_withdrawal_wet_service(connection_moisture(basis)), "", "NDS 2018 Table 11.3.3"});
    apply_temperature(adjusted, basis);
    return adjusted;
}

Adjusted adjust_lateral(double reference_lb, const LateralConditions& conditions, const model::Basis& basis) {
    Adjusted adjusted{reference_lb, {}};
    apply_method(adjusted, basis);
    apply(adjusted, {"C_M", "wet service factor, lateral", stated(basis.moisture.has_value()),
                     resistance::lateral_wet_service(connection_moisture(basis), conditions.diameter_in,
                                                     conditions.single_row_or_single_fastener),
                     "", "NDS 2018 Table 11.3.3"});
    apply_temperature(adjusted, basis);
    apply(adjusted, {"C_g", "group action factor", "", conditions.group_factor, "", "NDS 2018 11.3.6"});
    apply(adjusted, {"C_Delta", "geometry factor", "", conditions.geometry_factor, "", "NDS 2018 12.5.1"});
    apply(adjusted, {"C_eg", "end grain factor", conditions.end_grain_factor == 1.0 ? "side grain" : "end grain",
                     conditions.end_grain_factor, "", "NDS 2018 12.5.2"});
    return adjusted;
}

Adjusted reported_value(double allowable, std::string unit, const model::Basis& basis) {
    Adjusted adjusted{allowable, {}};
    adjusted.steps.push_back(
        {"R_a", "allowable value, as the report states it", "given", allowable, std::move(unit), "input"});
    if (basis.method == model::Method::lrfd) {
        apply(adjusted, {"gamma_L", "allowable value raised by the live load factor to meet a factored demand", "1.6",
                         live_load_factor, "", "assumption; ASCE 7-16 2.3.1"});
    }
    return adjusted;
}

}  // namespace toehold::checks
