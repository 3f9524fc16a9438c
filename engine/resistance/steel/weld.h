#pragma once
// Fillet welds in steel, AISC 360-16 J2.4, and the forces on a weld all round a post's foot. Strengths are nominal, lb
// per inch of weld; legs and thicknesses in. The increase for a force across the weld (J2.4(b)) is not taken: the weld
// runs round a thin tube.
#include "resistance/safety.h"

namespace toehold::resistance::steel {

inline constexpr Safety weld_safety{2.00, 0.75};

/// Throat of an equal-legged fillet, leg / sqrt(2), as 0.707 of the leg.
[[nodiscard]] double throat_in(double leg_in);

/// 0.60 FEXX on the throat, lb/in: J2.4(a), Table J2.5. `electrode_psi` is FEXX.
[[nodiscard]] double weld_metal_lb_per_in(double leg_in, double electrode_psi);

/// Shear rupture of the part the weld is on, 0.60 Fu t, lb/in: J2.4(a) with J4.2(b). Its safety is `weld_safety`.
[[nodiscard]] double base_metal_lb_per_in(double thickness_in, double ultimate_psi);

/// Least leg for the thinner part joined: Table J2.4 (1/8 in to 1/4 in thick, 3/16 to 1/2, 1/4 to 3/4, 5/16 above; read
/// in public text).
[[nodiscard]] double minimum_leg_in(double thinner_part_in);
/// Whether the leg is at least that, in inches or in the table's own millimeters (3, 5, 6 and 8 mm to 6, 13 and 19 mm
/// thick and above; read in the same). Within 0.001 in.
[[nodiscard]] bool is_minimum_leg(double leg_in, double thinner_part_in);

// A weld all round a foot, taken as a line without width: the elastic line method (common practice in weld design). A
// property of the line has one power of inch less than that of an area; a force on it is lb per inch.

enum class WeldShape { rectangle, circle };

struct WeldLine {
    WeldShape shape = WeldShape::rectangle;
    double length_in = 0.0;
    double section_x_in2 = 0.0;  ///< section modulus for bending about x
    double section_y_in2 = 0.0;  ///< for bending about y
};

/// b along x, d along y: length 2 (b + d), Sx = b d + d^2/3, Sy = b d + b^2/3.
[[nodiscard]] WeldLine rectangular_weld(double width_in, double depth_in);
/// Length pi D, S = pi D^2/4.
[[nodiscard]] WeldLine circular_weld(double diameter_in);

/// What the weld's foot carries. Signs do not matter; the worst point of the line is taken.
struct WeldForces {
    double moment_x_lb_in = 0.0;  ///< about x
    double moment_y_lb_in = 0.0;  ///< about y
    double shear_lb = 0.0;        ///< horizontal, shared evenly along the line
    double axial_lb = 0.0;        ///< vertical, shared evenly, counted as if it always added
};

/// Bending at the worst point, lb/in: corners of a rectangle add, a circle feels the resultant.
[[nodiscard]] double bending_lb_per_in(const WeldLine& line, const WeldForces& forces);
/// Resultant of bending with axial force, and shear across it, lb/in.
[[nodiscard]] double resultant_lb_per_in(const WeldLine& line, const WeldForces& forces);

}  // namespace toehold::resistance::steel
