#pragma once
// A through-bolt's washer or backing plate pressed into side grain: the area that bears. The strength of the wood is
// F_c,perp (NDS 2018 3.10.2) with the factors of its member. Lengths in, areas in2, stresses psi.

namespace toehold::resistance {

/// Largest bolt hole the standard allows in wood: D + 1/16 in, NDS 2018 12.1.3.2 (1/32 to 1/16 in oversize, read in a
/// public summary of the clause). The larger hole gives the smaller bearing area.
[[nodiscard]] double bolt_hole_in_wood_in(double bolt_diameter_in);

/// How much wood is under the washer or plate on each side of the bolt, measured from the bolt's centre.
struct Clearance {
    double along_in = 0.0;   ///< to the nearer end of the member, along the grain
    double across_in = 0.0;  ///< to the nearer edge, across the grain
};

/// Part of a bearing that lies on the wood evenly about the bolt, so that the pressure under it is uniform.
struct BearingArea {
    double along_in = 0.0;   ///< along the grain: the bearing length l_b
    double across_in = 0.0;  ///< across the grain; equals `along_in` for a round washer
    double area_in2 = 0.0;   ///< net of the hole, >= 0
};

/// Round washer: the largest concentric ring on the wood. `hole_diameter_in` is the larger of the washer's and the
/// wood's.
[[nodiscard]] BearingArea washer_bearing(double outside_diameter_in, double hole_diameter_in,
                                         const Clearance& clearance);

/// Rectangular plate with the bolt at its centre: the largest concentric rectangle on the wood.
[[nodiscard]] BearingArea plate_bearing(double along_in, double across_in, double hole_diameter_in,
                                        const Clearance& clearance);

/// How far beyond the nut a metal plate spreads a uniform bearing pressure without yielding in bending: a strip of
/// 1 in with c = t sqrt(F / (3 p)), from p c^2/2 = F t^2/6. The form of EN 1993-1-8 6.2.5 (from memory, to be
/// confirmed). `available_psi`: yield stress over its safety factor, or times phi; `pressure_psi` > 0.
[[nodiscard]] double plate_spread_in(double thickness_in, double available_psi, double pressure_psi);

}  // namespace toehold::resistance
