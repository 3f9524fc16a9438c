#pragma once
// What turns a reference design value of a dowel-type fastener in wood into an adjusted one: NDS 2018 11.3, one
// function a factor. Factors have no unit. Which apply to what, NDS 2018 Table 11.3.1:
//   lateral:    CD CM Ct Cg CDelta Ceg (ASD), KF phi lambda CM Ct Cg CDelta Ceg (LRFD)
//   withdrawal: CD CM Ct Ceg (ASD), KF phi lambda CM Ct Ceg (LRFD)
// The applicability was read in a public scan of Table 11.3.1; CM, Ct, Ceg and Eq. 11.3-1 in public copies of the
// clauses named. The geometry factor is in resistance/wood/fastener_placement.h.

namespace toehold::resistance {

/// Moisture content of the wood, NDS 2018 Table 11.3.3; the limit is 19 %.
enum class ConnectionMoisture {
    dry,               ///< at most 19 % when built and in service
    dried_in_service,  ///< above 19 % when built, at most 19 % in service
    wet,               ///< above 19 % in service
};

/// Sustained temperature, NDS 2018 Table 11.3.4.
enum class ConnectionTemperature { to_100F, to_125F, to_150F };

/// CD, NDS 2018 2.3.2 with 11.3.2: never above 1.6 for connections (impact does not apply). Belongs to strength
/// that wood has a part in; where the fastener's own metal governs it must not be used (11.3.2). Throws
/// std::invalid_argument below 0.
[[nodiscard]] double connection_load_duration(double load_duration);

/// CM for lag and wood screws in withdrawal, NDS 2018 Table 11.3.3: 0.7 above 19 % in service, else 1.0.
[[nodiscard]] double screw_withdrawal_wet_service(ConnectionMoisture moisture);

/// CM for dowel-type fasteners loaded laterally, NDS 2018 Table 11.3.3: 0.7 above 19 % in service; wood that
/// dries in service 0.4, but 0.7 for D < 1/4 in, and 1.0 for one fastener or one row parallel to grain.
[[nodiscard]] double lateral_wet_service(ConnectionMoisture moisture, double diameter_in,
                                         bool single_row_or_single_fastener);

/// Ct, NDS 2018 Table 11.3.4: 1.0, 0.8, 0.7 dry and 1.0, 0.7, 0.5 wet.
[[nodiscard]] double connection_temperature(ConnectionTemperature temperature, ConnectionMoisture moisture);

/// Ceg laterally loaded in end grain, NDS 2018 12.5.2.2: 0.67.
[[nodiscard]] constexpr double lateral_end_grain() { return 0.67; }
/// Ceg of a lag screw in withdrawal from end grain, NDS 2018 12.5.2.1: 0.75. Nails and wood screws may not be loaded
/// so at all (12.2.2.3 and 12.2.3.3).
[[nodiscard]] constexpr double lag_withdrawal_end_grain() { return 0.75; }

/// KF, NDS 2018 Table 11.3.1, every connection: 3.32.
[[nodiscard]] constexpr double connection_format_conversion() { return 3.32; }
/// phi, NDS 2018 Table 11.3.1, every connection: 0.65.
[[nodiscard]] constexpr double connection_resistance_factor() { return 0.65; }

// Group action factor Cg: the outer fasteners of a row take more than their share. NDS 2018 11.3.6, Eq.
// 11.3-1.

/// Load per slip of one dowel-type fastener: 180,000 D^1.5 wood to wood, 270,000 D^1.5 wood to metal; lb/in.
[[nodiscard]] double wood_to_wood_slip_modulus_lb_per_in(double diameter_in);
[[nodiscard]] double wood_to_metal_slip_modulus_lb_per_in(double diameter_in);

struct FastenerRow {
    int count = 1;                         ///< in the row, >= 1
    double spacing_in = 0.0;               ///< between neighbours, > 0 where count > 1
    double diameter_in = 0.0;              ///< nominal
    double slip_modulus_lb_per_in = 0.0;   ///< gamma, > 0 where count > 1
    double main_axial_stiffness_lb = 0.0;  ///< E A of the main member, gross, > 0 where count > 1
    double side_axial_stiffness_lb = 0.0;  ///< E A of all side members together, > 0 where count > 1
};

/// 1.0 for one fastener and for D < 1/4 in. Throws std::invalid_argument for a row without stiffness or spacing.
[[nodiscard]] double group_factor(const FastenerRow& row);

}  // namespace toehold::resistance
