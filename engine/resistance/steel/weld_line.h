#pragma once
// A weld all round a foot, taken as a line without width: the elastic line method (common practice in weld design).
// A property of the line has one power of inch less than that of an area; a force on it is lb per inch.

namespace toehold::resistance::steel {

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
