#pragma once
// The weld at a post's foot taken as a line without width: the elastic line method (common practice in weld design). A
// property of the line has one power of inch less than that of an area; a force on it is lb per inch.
//
// The method takes the plate for stiff. A thin plate gives way under the middle of the post's faces and leaves more to
// the corners: elastic solids of a 2 in tube pushed along its diagonal peak 1.14, 1.31 and 1.70 times as high as the
// line method says on plates of 1/2, 3/8 and 1/4 in. The line's value is asked of a fillet all the same, for three
// reasons.
//   - J2.4's strength is that of a weld in which the force has spread: AISC's own measure of a weld group, the
//     instantaneous center (Manual, Part 8), lets every inch work. So spread, a square line carries 9/8 of its elastic
//     moment square on and 3/2 of it on the diagonal, where the peak is worst (plastic over elastic section): the
//     line's value stays above what the fillet must hold at its limit.
//   - Under the load itself the weld never comes to that limit: 1.70 times a line's value that uses all of J2.4 with
//     its omega of 2.0 is 0.85 of the nominal strength.
//   - The wall beside it yields before it breaks, and spreads the force in the same way.
// A partial penetration groove, which breaks without such a yield, is asked for the peak: `groove_peak`.
#include "mechanics/plane/geometry.h"

#include <span>
#include <vector>

namespace toehold::resistance::steel {

/// What the peak in elastic solids comes to over the line's value on the thinnest plate looked at, 1/4 in.
inline constexpr double groove_peak = 1.70;

struct WeldSegment {
    mechanics::Point from, to;
};

/// About its centroid.
struct WeldLine {
    double length_in = 0.0;
    mechanics::Point center;
    double xx_in3 = 0.0;  ///< integral of x^2
    double xy_in3 = 0.0;
    double yy_in3 = 0.0;
    double radius_in = 0.0;                ///< of a ring, else 0
    std::vector<mechanics::Point> places;  ///< where it may be worst: ends of segments; of a ring, none
};
/// Straight pieces in plan, one or more, not all on one line.
[[nodiscard]] WeldLine weld_line(std::span<const WeldSegment> segments);
[[nodiscard]] WeldLine circular_weld(double diameter_in);

/// What the foot carries: a moment that tips it towards `direction`, and a push the same way through the origin.
struct WeldForces {
    double moment_lb_in = 0.0;
    double direction_rad = 0.0;
    double shear_lb = 0.0;  ///< horizontal, shared evenly along the line, with its torsion about the centroid
    double axial_lb =
        0.0;  ///< vertical, shared evenly, with its moment about the centroid; counted as if it always added
};

/// At one place of the line, lb/in.
struct WeldIntensity {
    double bending = 0.0;  ///< square to the plate, from the moment, >= 0
    double axial = 0.0;    ///< square to the plate, >= 0
    double shear = 0.0;    ///< along the plate, >= 0
    [[nodiscard]] double normal() const { return bending + axial; }
    [[nodiscard]] double resultant() const;
};
/// At every place; of a ring, where the moment is felt most.
[[nodiscard]] std::vector<WeldIntensity> intensities(const WeldLine& line, const WeldForces& forces);

/// What the intensity square to the plate at one place is made of, whatever the forces.
struct NormalShare {
    double towards_x = 0.0, towards_y = 0.0;  ///< for each lb in of a moment that tips that way, 1/in2
    double axial = 0.0;                       ///< for each lb of vertical force, 1/in, >= 0
};
/// At every place of a line that is no ring.
[[nodiscard]] std::vector<NormalShare> normal_shares(const WeldLine& line);
/// `WeldIntensity::normal` at that place, lb/in.
[[nodiscard]] double normal(const NormalShare& share, const WeldForces& forces);

}  // namespace toehold::resistance::steel
