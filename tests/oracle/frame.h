#pragma once
// Grids of beams that both programs solve, and what CalculiX says of them.
#include "mechanics/grillage/grillage.h"

#include <vector>

namespace toehold::test {

struct Frame {
    std::vector<mechanics::Point> nodes;
    std::vector<mechanics::GridMember> members;
    std::vector<mechanics::GridJoint> joints;
    std::vector<mechanics::GridSupport> supports;
    std::vector<mechanics::GridLoad> loads;
    std::vector<mechanics::MemberLoad> member_loads;
};

/// Where along a member its motion is wanted.
struct Station {
    int member = 0;
    double at_in = 0.0;
};

struct FrameSolution {
    std::vector<mechanics::GridMotion> nodes;
    std::vector<mechanics::GridMotion> stations;
};

/// Members cut into elements of about `element_in` and at every load and station.
[[nodiscard]] FrameSolution solve_frame_with_ccx(const Frame& frame, const std::vector<Station>& stations,
                                                 double element_in);

/// Two beams of unlike section that cross, askew in plan and on springs, loads inside both.
[[nodiscard]] Frame two_beams();

/// Three joists 2x10 at 16 in that hang over two supports, a rim across their ends and two blocks between them, which
/// meet the joists' faces; forces and torques inside blocks and joists. Invented.
[[nodiscard]] Frame deck_corner();

}  // namespace toehold::test
