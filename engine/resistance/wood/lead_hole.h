#pragma once
// Holes bored before a lag screw or a wood screw is turned in, AWC NDS 2018 12.1.4 and 12.1.5.

namespace toehold::resistance {

/// Diameters in in.
struct LagLeadHole {
    double shank_in = 0.0;        ///< clearance for the unthreaded shank: the shank's own diameter
    double thread_low_in = 0.0;   ///< for the thread, least ...
    double thread_high_in = 0.0;  ///< ... and most
};

/// 12.1.4.2: for the thread 65 to 85 % of the shank's diameter where G > 0.6, 60 to 75 % where 0.5 < G <= 0.6, 40 to 70
/// % where G <= 0.5. Diameter and specific gravity > 0; throws std::invalid_argument otherwise.
[[nodiscard]] LagLeadHole lag_screw_lead_hole(double diameter_in, double specific_gravity);

/// A customary bit, in 64ths of an inch, inside the range and nearest to its middle: sixteenths before thirty-seconds
/// before 64ths.
[[nodiscard]] double customary_bit_in(double low_in, double high_in);

}  // namespace toehold::resistance
