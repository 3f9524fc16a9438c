#pragma once
// Nails driven aslant through the side of a member's end into the face of what holds it: NDS 2018 12.1.6.4, 12.5.4 and
// Figure 12A (from memory, to be confirmed). Started a third of the nail's length from the end, 30 degrees from the
// member's length.

namespace toehold::resistance {

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
