#pragma once
// Holes bored before a lag screw or a wood screw is turned in, AWC NDS 2018 12.1.4 and 12.1.5. The lag screw's shares
// and both clauses' numbers were read in public copies; the wood screw's shares in a public handbook's account of the
// clause.

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

/// 12.1.4.3: a lag screw pulled on alone may go without a lead hole up to 3/8 in where G <= 0.5 and nothing splits.
/// Same range and errors.
[[nodiscard]] bool lag_screw_may_go_without_lead_hole(double diameter_in, double specific_gravity);

/// Diameters in in, of a screw both pulled and pushed sideways: between what 12.1.5.2 asks for the one and 12.1.5.3
/// for the other.
struct WoodScrewLeadHole {
    double shank_in = 0.0;        ///< for the unthreaded shank: D where G > 0.6, else 7/8 D
    double thread_low_in = 0.0;   ///< for the thread, as for a pull: 90 % of the root's where G > 0.6, else 70 % ...
    double thread_high_in = 0.0;  ///< ... and as for a push: the root's where G > 0.6, else 7/8 of it
    /// 12.1.5.2: none is asked for a pull where G <= 0.5; the range then is that of the next denser woods, so that the
    /// hole never takes wood from the thread.
    bool required_for_pull = true;
};

/// Nominal and root diameter and specific gravity > 0, root <= nominal; throws std::invalid_argument otherwise.
[[nodiscard]] WoodScrewLeadHole wood_screw_lead_hole(double diameter_in, double root_diameter_in,
                                                     double specific_gravity);

/// A customary bit inside the range and nearest to its middle: of the sixteenths of an inch that are inside, else of
/// the thirty-seconds, else of the 64ths; where none is inside, the largest 64th below the middle, for a hole too small
/// costs sweat and one too large costs grip. 0 < low <= high; throws std::invalid_argument otherwise.
[[nodiscard]] double customary_bit_in(double low_in, double high_in);
/// The same of metric bits: whole millimetres, else halves, else tenths.
[[nodiscard]] double customary_bit_mm(double low_in, double high_in);

}  // namespace toehold::resistance
