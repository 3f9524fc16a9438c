#pragma once
// Section properties of tubes, exact for the shape named. in.

namespace toehold::resistance::steel {

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

/// Wall to design with: 0.93 of the nominal one for electric-resistance-welded tube, AISC 360-16 B4.2.
[[nodiscard]] double design_wall_in(double nominal_wall_in);

}  // namespace toehold::resistance::steel
