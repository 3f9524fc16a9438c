// Factors of connections, NDS 2018 Table 11.3.1, and of reported values.
#include "checks/basis/factor.h"
#include "checks/basis/wood_basis.h"

#include <string>
#include <utility>

namespace toehold::checks {
namespace {

using format::phrase;

constexpr double live_load_factor = 1.6;  // ASCE 7-16 2.3.1, live load

/// A factor whose working is not shown; at 1.0 there is none to show.
Step unworked(std::string symbol, format::Phrase meaning, double value, std::string clause) {
    return {std::move(symbol),
            std::move(meaning),
            "",
            value,
            "",
            std::move(clause),
            value == 1.0 ? Origin::given : Origin::derived,
            true};
}

/// CD under ASD; KF, phi and lambda under LRFD.
void apply_method(Adjusted& adjusted, const model::Basis& basis) {
    if (basis.method == model::Method::asd) {
        apply(adjusted, by_basis("C_D", phrase("load duration factor, at most 1.6"), basis.load_duration.has_value(),
                                 resistance::connection_load_duration(model::load_duration(basis)), "NDS 2018 11.3.2"));
        return;
    }
    apply(adjusted, {"K_F", phrase("format conversion factor"), "connections",
                     resistance::connection_format_conversion(), "", "NDS 2018 Table 11.3.1", Origin::given});
    apply(adjusted, {"phi", phrase("resistance factor"), "connections", resistance::connection_resistance_factor(), "",
                     "NDS 2018 Table 11.3.1", Origin::given});
    apply(adjusted, by_basis("lambda", phrase("time effect factor"), basis.time_effect.has_value(),
                             model::time_effect(basis), "NDS 2018 Table N3"));
}

void apply_temperature(Adjusted& adjusted, const model::Basis& basis) {
    apply(adjusted,
          by_basis("C_t", phrase("temperature factor"), basis.temperature.has_value(),
                   resistance::connection_temperature(connection_temperature(basis), connection_moisture(basis)),
                   "NDS 2018 Table 11.3.4"));
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
          by_basis("C_M", phrase("wet service factor, withdrawal"), basis.moisture.has_value(),
                   resistance::screw_withdrawal_wet_service(connection_moisture(basis)), "NDS 2018 Table 11.3.3"));
    apply_temperature(adjusted, basis);
    return adjusted;
}

Adjusted adjust_lateral(double reference_lb, const LateralConditions& conditions, const model::Basis& basis) {
    Adjusted adjusted{reference_lb, {}};
    apply_method(adjusted, basis);
    apply(adjusted, by_basis("C_M", phrase("wet service factor, lateral"), basis.moisture.has_value(),
                             resistance::lateral_wet_service(connection_moisture(basis), conditions.diameter_in,
                                                             conditions.single_row_or_single_fastener),
                             "NDS 2018 Table 11.3.3"));
    apply_temperature(adjusted, basis);
    apply(adjusted, unworked("C_g", phrase("group action factor"), conditions.group_factor, "NDS 2018 11.3.6"));
    apply(adjusted, unworked("C_Delta", phrase("geometry factor"), conditions.geometry_factor, "NDS 2018 12.5.1"));
    apply(adjusted,
          {"C_eg", phrase("end grain factor"), conditions.end_grain_factor == 1.0 ? "side grain" : "end grain",
           conditions.end_grain_factor, "", "NDS 2018 12.5.2", Origin::given});
    return adjusted;
}

Adjusted reported_value(double allowable, std::string unit, const model::Basis& basis) {
    Adjusted adjusted{allowable, {}};
    adjusted.steps.push_back(
        from_file("R_a", phrase("allowable value, as the report states it"), allowable, std::move(unit)));
    if (basis.method == model::Method::lrfd) {
        apply(adjusted, {"gamma_L", phrase("allowable value raised by the live load factor to meet a factored demand"),
                         "1.6", live_load_factor, "", "assumption; ASCE 7-16 2.3.1"});
    }
    return adjusted;
}

}  // namespace toehold::checks
