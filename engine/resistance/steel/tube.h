#pragma once
// Tubes, round and rectangular: section properties, exact for the shape named, and what a tube of steel carries as a
// post. in, lb, psi; strengths are nominal (`flexure_safety` makes them usable).
#include "resistance/steel/member.h"

#include <optional>

namespace toehold::resistance::steel {

/// A tube as drawn, outside. Round: width and depth are the diameter.
struct TubeShape {
    bool round = false;
    double width_in = 0.0;  ///< along x, > 0
    double depth_in = 0.0;  ///< along y, > 0
    double wall_in = 0.0;   ///< nominal, > 0, under half of either
};

/// About x (bent by a push along y) and about y.
struct TubeSection {
    double area_in2 = 0.0;
    double inertia_x_in4 = 0.0, inertia_y_in4 = 0.0;
    double section_x_in3 = 0.0, section_y_in3 = 0.0;
    double plastic_x_in3 = 0.0, plastic_y_in3 = 0.0;
    double torsion_in4 = 0.0;  ///< of the closed thin wall (Bredt)
};

/// Width along x, depth along y, outside; wall under half of either. `outside_radius_in` 0: square corners; the inside
/// radius is the outside one less the wall, at least 0.
[[nodiscard]] TubeSection rectangular_section(double width_in, double depth_in, double wall_in,
                                              double outside_radius_in);
[[nodiscard]] TubeSection round_section(double diameter_in, double wall_in);

/// Wall to design with: 0.93 of the nominal one for electric-resistance-welded tube, the nominal one where the tube's
/// standard holds it to that (`full_wall`; ASTM A1085): AISC 360-16 B4.2.
[[nodiscard]] double design_wall_in(double nominal_wall_in, bool full_wall = false);

/// Full wall, square corners (as extruded).
[[nodiscard]] TubeSection section_as_drawn(const TubeShape& tube);
/// The design wall, and outside corners of twice that wall: the lesser section of a steel tube.
[[nodiscard]] TubeSection design_section(const TubeShape& tube, bool full_wall = false);

enum class BentAbout { x, y };

/// Elastic and plastic modulus about an axis, in3.
struct Moduli {
    double section_in3 = 0.0;
    double plastic_in3 = 0.0;
};
[[nodiscard]] Moduli moduli(const TubeSection& section, BentAbout axis);

/// What a tube is made of, and how long it stands without sideways support.
struct TubeMember {
    TubeShape shape;
    double yield_psi = 0.0;
    double modulus_psi = 0.0;
    double unbraced_in = 0.0;
    bool full_wall = false;  ///< see `design_wall_in`
};

/// Moment of a steel tube about an axis, F7 or F8, with its design section; slender walls have the section that still
/// works beside them. Absent for walls along the load beyond 5.70 root(E/Fy) and for round ones of D/t from 0.45 E/Fy,
/// which these clauses do not cover.
[[nodiscard]] std::optional<double> tube_moment_lb_in(const TubeMember& tube, BentAbout axis);

/// Share of the area that counts in axial compression, E7: 1 where no wall is slender (Table B4.1a: flat walls 1.40
/// root(E/Fy), round ones 0.11 E/Fy). Flat walls by their effective width in bending at yield, which is no more than
/// that of E7.1 at the lower stress of a column; round ones 2/3 + 0.038 E/(Fy D/t), E7.2 (from memory, to be
/// confirmed).
[[nodiscard]] double compressed_share(const TubeMember& tube);

/// Axial force of a column fixed at its foot and free at its top, E3 with K = 2.1 (Commentary Table C-A-7.1, case e).
[[nodiscard]] double flagpole_axial_lb(const TubeSection& section, double height_in, double yield_psi,
                                       double modulus_psi);

}  // namespace toehold::resistance::steel
