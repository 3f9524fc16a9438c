#pragma once
// Bending strength of a plate and of tubes in steel: AISC 360-16 F7, F8 and F11. Nominal moments, lb in; in, psi.
#include "resistance/steel/safety.h"
#include "resistance/steel/tube_section.h"

#include <optional>

namespace toehold::resistance::steel {

inline constexpr Safety flexure_safety{1.67, 0.90};

/// A plate bent over its face: Fy Z, no more than 1.6 Fy S: F11.1. Z = b t^2/4, S = b t^2/6.
[[nodiscard]] double plate_moment_lb_in(double width_in, double thickness_in, double yield_psi);

/// A rectangular tube bent about one axis.
struct RectangularFlexure {
    double flange_flat_in = 0.0;   ///< b: clear flat width of the wall in compression
    double web_flat_in = 0.0;      ///< h: clear flat depth of the walls along the load
    double wall_in = 0.0;          ///< design wall
    double section_in3 = 0.0;      ///< S about the axis
    double plastic_in3 = 0.0;      ///< Z about the axis
    double other_radius_in = 0.0;  ///< r about the other axis
    double area_in2 = 0.0;
    double torsion_in4 = 0.0;          ///< J
    bool about_stronger_axis = false;  ///< only then can the tube buckle sideways
    double unbraced_in = 0.0;          ///< length without sideways support
};

/// F7.1 yielding, F7.2 flange and F7.3 web local buckling in the range of Table B4.1b up to their slender limits, F7.4
/// lateral-torsional buckling with Cb = 1; the least. Absent for slender walls, which are not covered here.
[[nodiscard]] std::optional<double> rectangular_tube_moment_lb_in(const RectangularFlexure& tube, double yield_psi,
                                                                  double modulus_psi);

/// F8: yielding, and local buckling of a noncompact or slender wall. Absent for D/t of 0.45 E/Fy and more, which the
/// section does not cover.
[[nodiscard]] std::optional<double> round_tube_moment_lb_in(double diameter_in, double wall_in, double section_in3,
                                                            double plastic_in3, double yield_psi, double modulus_psi);

}  // namespace toehold::resistance::steel
