#pragma once
// What a dowel-type fastener brings to the yield limit equations: dowel bearing strength Fe of what it passes through,
// and its own bending yield strength Fyb. psi. NDS 2018 12.3.3 and Table 12.3.3 for wood, Appendix I for steel, Table
// I1 for Fyb (its bands by diameter, and 70, 60 and 45 ksi of lag screws, read in public copies of the table).

namespace toehold::resistance {

/// From this diameter on the direction of the grain matters to a dowel's bearing: NDS 2018 Table 12.3.3 note 2. in.
inline constexpr double thick_dowel_in = 0.25;

/// Fe parallel to grain, D >= 1/4 in: 11200 G. NDS 2018 Table 12.3.3 note 2.
[[nodiscard]] double dowel_bearing_parallel_psi(double specific_gravity);
/// Fe perpendicular to grain, 1/4 <= D <= 1 in: 6100 G^1.45 / sqrt(D). NDS 2018 Table 12.3.3 note 2.
[[nodiscard]] double dowel_bearing_perpendicular_psi(double specific_gravity, double diameter_in);
/// Fe of a dowel thinner than 1/4 in, any direction: 16600 G^1.84. NDS 2018 Table 12.3.3 note 2 (coefficient
/// and rounding read in public copies; it gives the printed nail values met in the tests).
[[nodiscard]] double small_dowel_bearing_psi(double specific_gravity);
/// To the nearest 50 psi, as the printed table has it; the lateral tables are computed from those.
[[nodiscard]] double as_tabulated_psi(double bearing_psi);

/// Hankinson's formula, NDS 2018 Eq. 12.3-11. `angle_rad` from the grain to the force, any value.
[[nodiscard]] double hankinson_psi(double parallel_psi, double perpendicular_psi, double angle_rad);

/// Fe of wood for a dowel of nominal diameter D (not the root diameter), tabulated values put through Hankinson's
/// formula. Throws std::invalid_argument unless 0 < G < 1.2 and 0 < D <= 1 in, the standard's range.
[[nodiscard]] double dowel_bearing_psi(double specific_gravity, double diameter_in, double angle_rad);

/// Fe of a steel plate: 1.5 Fu hot-rolled from 1/4 in, 1.375 Fu below. NDS 2018 Appendix I.
[[nodiscard]] double steel_dowel_bearing_psi(double ultimate_psi, double thickness_in);
/// Fe of an aluminum plate: 1.25 Ftu. Assumption: the NDS is silent; its steel values are the bearing strength per
/// AISC, 2.4 Fu, over 1.6, and the Aluminum Design Manual's bearing strength is 2.0 Ftu (from memory).
[[nodiscard]] double aluminum_dowel_bearing_psi(double ultimate_psi);

/// Nails, and wood screws by their nominal diameter. Thinner than the table's 0.099 in: its first value, which is
/// low, as thinner wire is stronger. Thicker than 0.375 in: 45,000. Throws std::invalid_argument unless D > 0.
[[nodiscard]] double nail_bending_yield_psi(double diameter_in);

/// Lag screws by nominal diameter: 70,000 to 1/4 in, 60,000 to 5/16 in, 45,000 from 3/8 in.
[[nodiscard]] double lag_bending_yield_psi(double diameter_in);

/// Whether the full diameter D of a fastener with a full-body shank may stand for the root in the yield equations: NDS
/// 2018 12.3.7.2, threads over at most a quarter of the bearing length in the member that holds them (read in a
/// manufacturer's public note on the clause). in, both >= 0.
[[nodiscard]] constexpr bool full_diameter_counts(double threads_in, double bearing_in) {
    constexpr double rounding = 1e-6;
    return bearing_in > 0.0 && threads_in <= 0.25 * bearing_in * (1.0 + rounding);
}
/// Thread of a hexagon bolt of this length under the head: 2 D + 1/4 in to 6 in long, 2 D + 1/2 in above, no more than
/// the length. ASME B18.2.1, as in NDS 2018 Table L1 (from memory, to be confirmed).
[[nodiscard]] double bolt_thread_length_in(double diameter_in, double length_in);

/// Bolts: 45,000.
[[nodiscard]] constexpr double bolt_bending_yield_psi() { return 45000.0; }

}  // namespace toehold::resistance
