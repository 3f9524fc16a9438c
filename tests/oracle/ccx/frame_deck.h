#pragma once
// An input deck of CalculiX for a grid of beams: its general beam, the user element U1 (Timoshenko, two nodes, six
// freedoms), of which only the lift and the rotations about x and y are left to move. Keywords after its manual,
// version 2.20: *USER ELEMENT, *BEAM SECTION (GENERAL), *SPRING (SPRING1), *EQUATION.
//
// What one must know of U1 in version 2.20, tried out on cantilevers:
// - a chain of elements is right when it bends about the section's 2-direction's axis only, so the 1-direction points
// up
//   here; bent the other way, it does not balance;
// - its torsion constant is I11 + I22, so I22, which moves nothing else here, takes whatever that needs, below 0 too;
// - its shear is that of a compatible field and not of the exact beam: an element is too stiff by 4/P of its shear's
//   part, with P = 12 E I/(G A_s l^2), so elements must be short (and P not near 1); without shear it is exact.
#include "oracle/frame.h"

#include <string>

namespace toehold::test {

struct FrameDeck {
    std::string text;
    std::vector<std::size_t> nodes;     ///< ccx's number of each node of the frame
    std::vector<std::size_t> stations;  ///< and of each station
};

[[nodiscard]] FrameDeck frame_deck(const Frame& frame, const std::vector<Station>& stations, double element_in);

}  // namespace toehold::test
