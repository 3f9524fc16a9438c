#pragma once
// One nail or wood screw through a side member of wood into a main member of wood, square to the face or as a toe-nail:
// the reference lateral design value of NDS 2018 12.3, side grain or end grain. The end grain factor is not in it
// (resistance/wood/connection_factors.h). in, lb, psi.
#include "resistance/wood/yield_limit.h"

namespace toehold::resistance {

struct WoodToWood {
    double diameter_in = 0.0;        ///< outside: nail shank, wood screw's nominal; > 0, at most 1
    double root_diameter_in = 0.0;   ///< wood screw's thread root; 0 for a nail
    double length_in = 0.0;          ///< whole, from under the head
    double bending_yield_psi = 0.0;  ///< Fyb; 0: by diameter, NDS 2018 Table I1
    double side_thickness_in = 0.0;  ///< of the member under the head
    double main_thickness_in = 0.0;  ///< of the member that holds the point; 0: the point stays inside it
    double side_specific_gravity = 0.0;
    double main_specific_gravity = 0.0;
    double side_angle_rad = 0.0;  ///< from the side member's grain to the force, 0 to pi/2
    double main_angle_rad = 0.0;  ///< from the main member's grain to the force; unused in end grain
    bool main_end_grain = false;  ///< driven along the main member's grain: Fe perpendicular (12.3.3.4)
};

struct SingleShear {
    double value_lb = 0.0;                ///< Z; 0 where the penetration is less than the least permitted
    YieldMode mode = YieldMode::IV;       ///< that governs
    double penetration_in = 0.0;          ///< p into the main member, tip included
    double minimum_penetration_in = 0.0;  ///< 6 D (12.1.5.6 and 12.1.6.4)
    double main_bearing_in = 0.0;         ///< lm: p less half the tip, the tip being 2 D long (12.3.5.3)
};

/// Throws std::invalid_argument for sizes and gravities not above 0.
[[nodiscard]] SingleShear single_shear_value(const WoodToWood& connection);

// Toe-nails: driven aslant through the side of a member's end into the face of what holds it. NDS 2018 12.1.6.3, 12.5.4
// and Figure 12A (from memory, to be confirmed). Started a third of the nail's length from the end, 30 degrees from the
// member's length.

/// Ctn on a withdrawal value, NDS 2018 12.5.4.1 (read in a public library of the standard's factors).
[[nodiscard]] constexpr double toe_nail_withdrawal() { return 0.67; }
/// Ctn on a lateral value, NDS 2018 12.5.4.2 (read in the same).
[[nodiscard]] constexpr double toe_nail_lateral() { return 0.83; }

/// Lengths of one toe-nail, in.
struct ToeNailPlace {
    double side_in = 0.0;  ///< ls, L/3: bearing length in the member it is driven through
    /// L cos 30 - L/3: how deep the point stands below the holder's face. Taken as the penetration in withdrawal too,
    /// though the nail's own length in the wood is longer by 1/cos 30: conservative.
    double penetration_in = 0.0;
    double inside_in = 0.0;  ///< where it crosses the holder's face, from the member's side: L/3 tan 30
};
[[nodiscard]] ToeNailPlace toe_nail_place(double length_in);

}  // namespace toehold::resistance
