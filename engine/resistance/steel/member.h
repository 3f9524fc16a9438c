#pragma once
// Members of steel: AISC 360-16 F11 plates and F7, F8 tubes in bending, E3 columns, H1 bending beside axial force.
// Nominal strengths; in, lb, psi.
#include "resistance/safety.h"

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

/// Fcr of a member without slender walls, Eq. E3-2 to E3-4. `slenderness`: effective length over radius of gyration,
/// > 0. The safety is that of flexure, 1.67 and 0.90 (E1).
[[nodiscard]] double buckling_stress_psi(double slenderness, double yield_psi, double modulus_psi);

/// Share of the usable moment that an axial force leaves, H1.1, Eq. H1-1a and H1-1b solved for it. `axial_ratio`:
/// axial force over the usable one, >= 0.
[[nodiscard]] double moment_share_beside_axial(double axial_ratio);

}  // namespace toehold::resistance::steel
