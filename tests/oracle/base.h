#pragma once
// Bases that both programs solve.
#include "mechanics/flexible_plate/flexible_plate.h"

#include <string>
#include <vector>

namespace toehold::test {

struct Base {
    std::string name;
    mechanics::Polygon outline;
    mechanics::Polygon post;  ///< outline of the post's foot
    double modulus_psi = 29e6;
    double poisson = 0.3;
    double thickness_in = 0.5;
    std::vector<mechanics::FlexibleAnchor> anchors;
    std::vector<mechanics::BedRectangle> bed;
};

[[nodiscard]] mechanics::Polygon rectangle(double width_in, double depth_in);
[[nodiscard]] mechanics::Polygon rounded_rectangle(double width_in, double depth_in, double corner_in);
[[nodiscard]] mechanics::Polygon circle(double diameter_in);
[[nodiscard]] mechanics::Polygon ell(double width_in, double depth_in, double cut_in);  ///< without its +x +y corner

[[nodiscard]] mechanics::PlateMesh mesh_of(const Base& base, double fineness);
[[nodiscard]] mechanics::FlexiblePlateInput input_of(const Base& base, mechanics::PlateMesh mesh);

/// 8 x 8 x 1/2 in of steel, a 2-1/2 in tube, four anchors, two blocks 3-1/2 in wide.
[[nodiscard]] Base square_on_two_blocks();

/// A horizontal push of 200 lb at 42 in, towards an angle from +x counter-clockwise.
[[nodiscard]] mechanics::PlateLoad push(double direction_deg);

}  // namespace toehold::test
