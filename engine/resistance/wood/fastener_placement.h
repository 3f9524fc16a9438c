#pragma once
// Distances of fasteners from edges, ends and each other in side grain: NDS 2018 12.5.1. Lengths in.
//
// First the hard minimums, below which no design value is given; then the geometry factor, by which an end distance or
// a spacing between the minimum and the full one lowers the lateral design value. Tables 12.5.1A to D are for
// D >= 1/4 in, Table 12.5.1E for lag screws in withdrawal that carry no lateral load. The multiples of D were
// read in public copies of the tables.

namespace toehold::resistance {

/// NDS 2018 12.5.1 gives multiples of D from this diameter up; below it, only that the wood must not split.
[[nodiscard]] constexpr double least_tabulated_diameter_in() { return 0.25; }

// Withdrawal, Table 12.5.1E.
[[nodiscard]] constexpr double withdrawal_edge_in(double diameter_in) { return 1.5 * diameter_in; }
[[nodiscard]] constexpr double withdrawal_end_in(double diameter_in) { return 4.0 * diameter_in; }
[[nodiscard]] constexpr double withdrawal_spacing_in(double diameter_in) { return 4.0 * diameter_in; }

/// The unloaded edge of a load across the grain: Table 12.5.1C (1.5 D was read in a public quotation of the standard's
/// commentary).
[[nodiscard]] constexpr double unloaded_edge_in(double diameter_in) { return 1.5 * diameter_in; }
/// Edge distance loaded along the grain: Table 12.5.1C. 1.5 D, and for l/D > 6 also half the spacing between rows (both
/// read in the publisher's answer in a public mail archive). `rows_apart_in`: 0 where there is one row only.
[[nodiscard]] double edge_loaded_along_in(double diameter_in, double length_in_wood_in, double rows_apart_in);
/// Edge towards which a load across the grain acts: Table 12.5.1C (4 D was read in the same quotation).
[[nodiscard]] constexpr double loaded_edge_in(double diameter_in) { return 4.0 * diameter_in; }

/// Loaded along the grain towards the end, softwood: Table 12.5.1A; the full design value needs 7 D.
[[nodiscard]] constexpr double end_loaded_along_in(double diameter_in) { return 3.5 * diameter_in; }
/// Loaded across the grain: Table 12.5.1A; the full design value needs 4 D.
[[nodiscard]] constexpr double end_loaded_across_in(double diameter_in) { return 2.0 * diameter_in; }

/// Between fasteners in a row: Table 12.5.1B (3 D was read in a public trade letter); the full value needs 4 D.
[[nodiscard]] constexpr double spacing_in_row_in(double diameter_in) { return 3.0 * diameter_in; }
/// Between rows loaded across the grain, measured along it: Table 12.5.1D. 2.5 D for l/D <= 2, (5 l + 10 D)/8 between,
/// 5 D for l/D >= 6, with l the fastener's length in the wood, > 0.
[[nodiscard]] double rows_loaded_across_in(double diameter_in, double length_in_wood_in);

/// Most between the outermost rows that one piece of steel holds apart across the grain of sawn lumber, 12.5.1.3 (from
/// memory, to be confirmed).
[[nodiscard]] constexpr double rows_on_one_plate_in() { return 5.0; }

// Fasteners under 1/4 in, with lead holes: the recommendations of the NDS Commentary for wood screws (C12.1.5, from
// memory). The clause itself asks only that the wood does not split.
[[nodiscard]] constexpr double small_screw_edge_in(double diameter_in) { return 2.5 * diameter_in; }
[[nodiscard]] constexpr double small_screw_end_in(double diameter_in) { return 10.0 * diameter_in; }
[[nodiscard]] constexpr double small_screw_spacing_along_in(double diameter_in) { return 10.0 * diameter_in; }
[[nodiscard]] constexpr double small_screw_spacing_across_in(double diameter_in) { return 5.0 * diameter_in; }

// Geometry factor C_Delta, 12.5.1, Tables 12.5.1A and 12.5.1B (read in public copies). 1.0 for D < 1/4 in, whose
// placement the standard leaves to good practice. The least factor of any fastener in a group holds for the whole group
// (12.5.1.2).

/// How the fastener's force meets the end it is measured to.
enum class EndLoading {
    toward,  ///< a component along the grain presses towards this end ("parallel, tension"): full 7 D, least 3.5 D
    away,    ///< the component along the grain points away from it ("parallel, compression"): full 4 D, least 2 D
    perpendicular,  ///< none along the grain: full 4 D, least 2 D
};

/// End distance over the full one, at most 1; 0 below the least, where no value may be used. The full distance is
/// the softwoods' (hardwoods need 5 D instead of 7 D). A force at an angle takes the parallel limits: conservative.
[[nodiscard]] double end_distance_factor(double end_in, double diameter_in, EndLoading loading);

/// Spacing over the full 4 D, at most 1; 0 below 3 D. Taken for any direction of force and any two neighbours,
/// which is never more favorable than the tables.
[[nodiscard]] double spacing_factor(double spacing_in, double diameter_in);

}  // namespace toehold::resistance
