#pragma once
// Members of steel: AISC 360-16 F11 plates and F7, F8 tubes in bending, E3 columns, H1 bending beside axial force.
// Nominal strengths; in, lb, psi.
#include "resistance/safety.h"

#include <optional>

namespace toehold::resistance::steel {

inline constexpr Safety flexure_safety{1.67, 0.90};

/// A plate bent over its face: Fy Z, no more than 1.6 Fy S: F11.1. Z = b t^2/4, S = b t^2/6.
[[nodiscard]] double plate_moment_lb_in(double width_in, double thickness_in, double yield_psi);

/// A rectangular tube bent about one axis. Flat widths are the outside ones less three walls: B4.1b(d), corner radius
/// not known.
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

/// Width of a wall in compression that still works once it has buckled, Eq. F7-4; the flat width itself where the wall
/// is not slender (b/t up to 1.40 root(E/Fy), Table B4.1b case 17). Read in public text.
[[nodiscard]] double effective_wall_in(double flat_in, double wall_in, double yield_psi, double modulus_psi);

/// F7.1 yielding, F7.2 flange local buckling with Table B4.1b's limits, F7.3 web local buckling up to its slender
/// limit, F7.4 lateral-torsional buckling with Cb = 1; the least. A slender flange has the effective section of Eq.
/// F7-3, with what is lost of the flange in compression taken off the other too, as the AISC Design Examples do (F.8B):
/// the center stays in the middle, and the modulus is a little too small. Absent for slender webs (h/t over 5.70
/// root(E/Fy)), which no standard tube has.
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
