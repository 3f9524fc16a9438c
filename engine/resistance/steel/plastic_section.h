#pragma once
// The plastic modulus of a square, rectangular or round section, hollow or solid, in any direction of bending: exact
// plasticity of the section, without a formula for the interaction of two axes. in, rad.
#include "resistance/steel/tube.h"

#include <array>
#include <cstddef>

namespace toehold::resistance::steel {

/// A rectangle with rounded corners less a smaller one about the same center; the inner may be empty.
struct HollowRectangle {
    double width_in = 0.0;           ///< outside, along x, > 0
    double depth_in = 0.0;           ///< outside, along y, > 0
    double wall_in = 0.0;            ///< > 0; half the lesser side: nothing is left inside
    double outside_radius_in = 0.0;  ///< of the outside corners, >= 0, at most half the lesser side
};

/// The integral of the distance from a line through the center, over the area, in3: the plastic modulus about that
/// line. `angle_rad`: of the line from x.
[[nodiscard]] double plastic_modulus_in3(const HollowRectangle& section, double angle_rad);

/// All directions at once. A moment about an axis is carried up to yield times `about` of that axis, whatever line the
/// section turns about to carry it: for every line, its plastic moment times yield bounds the component of the moment
/// along it, and the least of these bounds is reached (upper and lower bound meet: the yield surface is convex).
class PlasticSection {
  public:
    explicit PlasticSection(const HollowRectangle& section);
    /// in3, for a moment about an axis at this angle from x. Lines are searched at every half degree, which is at most
    /// 1e-5 too much.
    [[nodiscard]] double about(double angle_rad) const;

  private:
    static constexpr std::size_t lines_ = 181;                 ///< from 0 to 90 degrees; the rest is symmetry
    std::array<double, lines_> moduli_{}, cosine_{}, sine_{};  ///< of each line; of its angle from x
};

/// The section a tube is designed with (`design_section`), as a shape; of the full wall where `full_wall`.
[[nodiscard]] HollowRectangle design_shape(const TubeShape& tube, bool full_wall);

}  // namespace toehold::resistance::steel
