#pragma once
// Beams in space solved by Z88, a general-purpose finite element program (Debian package z88, version 13.0; its
// manual's chapters 3.2, 3.4 and 4.2): element no. 2, the exact beam of Bernoulli's theory, by the direct solver Z88F.
//
// CalculiX's general beam is right about one axis only (see ccx/frame_deck.h), so it cannot bend a rail both ways.
//
// What one must know of element no. 2, tried out on cantilevers: its y axis is horizontal (of an upright beam it is the
// frame's y), rotations follow the right-hand rule, contrary to the manual's remark, and a beam does not shear.
#include "mechanics/space_frame/space_frame.h"

#include <vector>

namespace toehold::test {

/// One motion of a node that is held: 0 to 2 along x, y, z, 3 to 5 about them.
struct HeldMotion {
    int node = 0, motion = 0;
    friend auto operator<=>(const HeldMotion&, const HeldMotion&) = default;
};

/// Members level or sloping, with z toward up, or upright, with z along the frame's x; no shear deformation.
struct BeamsInSpace {
    std::vector<mechanics::SpaceVector> nodes;
    std::vector<mechanics::SpaceMember> members;
    std::vector<int> clamped;  ///< nodes
    mechanics::SpaceLoads loads;
    std::vector<HeldMotion> held = {};  ///< of nodes that are not clamped
};

/// The nodes' motions, printed to 8 digits. Throws std::runtime_error where the program is not installed or fails.
[[nodiscard]] std::vector<mechanics::SpaceMotion> solve_beams_with_z88(const BeamsInSpace& beams);

}  // namespace toehold::test
