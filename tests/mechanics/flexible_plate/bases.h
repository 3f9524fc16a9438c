#pragma once
// Whole bases with a flexible plate that several tests share: plausible ones of every outline, and random ones.
#include "mechanics/flexible_plate/flexible_plate.h"

#include <string>
#include <vector>

namespace toehold::test {

struct FlexibleBase {
    std::string name;
    mechanics::Polygon outline, ring;
    std::vector<mechanics::FlexibleAnchor> anchors;
    std::vector<mechanics::BedRectangle> bed;
    double modulus_psi = 29e6, poisson = 0.3, thickness_in = 0.375;
};

[[nodiscard]] mechanics::Polygon rounded_rectangle(double width, double height, double radius);
/// A bar of `flange` x `thickness` with a stem of `thickness` below it, `depth` over all; the post's centre at 0, 0.
[[nodiscard]] mechanics::Polygon t_shape(double flange, double depth, double thickness);

[[nodiscard]] FlexibleBase square_base();    ///< 8 x 8 rounded, four anchors, two blocks with a gap between them
[[nodiscard]] FlexibleBase round_base();     ///< 8 in across, five anchors, round post
[[nodiscard]] FlexibleBase l_base();         ///< L with five anchors, the post in its corner
[[nodiscard]] FlexibleBase lopsided_base();  ///< aluminum, post near an edge, anchors of different kinds, preloaded
[[nodiscard]] std::vector<FlexibleBase> common_bases();

/// Plausible in every number, symmetric in none. Only inside a RapidCheck property.
[[nodiscard]] FlexibleBase random_base();

[[nodiscard]] mechanics::PlateMesh mesh_of(const FlexibleBase& base, double fineness);
[[nodiscard]] mechanics::FlexiblePlateInput input_of(const FlexibleBase& base, double fineness);
[[nodiscard]] double largest_force(const mechanics::FlexiblePlateSolution& solution);
[[nodiscard]] double largest_tension(const mechanics::FlexiblePlateSolution& solution);

}  // namespace toehold::test
