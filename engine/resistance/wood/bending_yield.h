#pragma once
// Bending yield strength Fyb of dowel-type fasteners by diameter, psi: NDS 2018 Appendix I, Table I1 (from memory, to
// be confirmed; the lag screw row is what reproduces NDS 2018 Table 12K).

namespace toehold::resistance {

/// Nails, and wood screws by their nominal diameter. Thinner than the table's 0.099 in: its first value, which is
/// low, as thinner wire is stronger. Thicker than 0.375 in: 45,000. Throws std::invalid_argument unless D > 0.
[[nodiscard]] double nail_bending_yield_psi(double diameter_in);

/// Lag screws by nominal diameter: 70,000 to 1/4 in, 60,000 to 5/16 in, 45,000 from 3/8 in.
[[nodiscard]] double lag_bending_yield_psi(double diameter_in);

/// Bolts: 45,000.
[[nodiscard]] constexpr double bolt_bending_yield_psi() { return 45000.0; }

}  // namespace toehold::resistance
