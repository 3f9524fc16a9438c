#pragma once
// A line of guard in space for Z88 (z88/beams.h), written from where its posts stand and what they and the rail are,
// without anything of demand/line but the input's plain values.
//
// Every post is an upright beam on a foot that does not move; what its base gives is a short level beam from the foot
// along the mount's own x, which twists under pushes along y and bends under those along x. What joins the rail to a
// post is a beam half a thousandth of an inch long that passes forces and no moment worth the name, and so is a joint
// of the rail. The rail's beams slope as it does. What passes through the rail follows from the forces on the posts by
// statics alone.
#include "demand/line/line_demand.h"
#include "oracle/line/line_solution.h"

#include <vector>

namespace toehold::test {

/// Sloping spans run along x. Posts whose two ways bend unlike face along x or y.
struct LineProject {
    demand::LineInput line;
    /// Where the rail carries no moment, in inches along it in plan from the first post: splices, breaks, changes of
    /// slope.
    std::vector<double> joints_in = {};
    /// At a joint over a post each side of the rail has a connection of its own to the post's top.
    bool own_connections = false;
};

/// A push of 1 lb, posts and rail at the ends of their ranges that the corner names.
[[nodiscard]] LineSolution solve_line_with_z88(const LineProject& project, const demand::LineCorner& corner,
                                               const RailPush& push);

}  // namespace toehold::test
