#pragma once
// The detail's basis (method, load duration, moisture, temperature) applied to connections in wood:
// NDS 2018 Table 11.3.1. ASD gives an allowable value, LRFD a factored resistance.
#include "checks/basis/adjusted.h"
#include "model/basis.h"
#include "resistance/wood/connection_factors.h"

#include <string>

namespace toehold::checks {

[[nodiscard]] resistance::ConnectionMoisture connection_moisture(const model::Basis& basis);
[[nodiscard]] resistance::ConnectionTemperature connection_temperature(const model::Basis& basis);

/// Lag or wood screw in withdrawal from side grain: W' from W. lb, or lb/in for lb/in.
[[nodiscard]] Adjusted adjust_withdrawal(double reference_lb, const model::Basis& basis);

struct LateralConditions {
    double diameter_in = 0.0;                    ///< nominal
    bool single_row_or_single_fastener = false;  ///< in the wood member: one fastener, or one row parallel to grain
    double geometry_factor = 1.0;                ///< CDelta, 12.5.1
    double group_factor = 1.0;                   ///< Cg, 11.3.6
    double end_grain_factor = 1.0;               ///< Ceg, 12.5.2; 1 in side grain
};

/// Dowel-type fastener loaded across its axis: Z' from Z, lb.
[[nodiscard]] Adjusted adjust_lateral(double reference_lb, const LateralConditions& conditions,
                                      const model::Basis& basis);

/// An allowable (ASD) value a report states, made comparable with the demand: as it is under ASD; times the live
/// load's factor 1.6 under LRFD (assumption: the report's safety margin is kept on the factored load).
[[nodiscard]] Adjusted reported_value(double allowable, std::string unit, const model::Basis& basis);

}  // namespace toehold::checks
