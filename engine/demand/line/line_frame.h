#pragma once
// A line's rail on its posts at one corner of the ranges, solved once for every unit load on its nodes: motions of the
// nodes in plan. All else follows from these by the beam's own formulas, for a load anywhere on it.
//
// A post with its base and connection is two springs at the rail, along its own axes: a level force at its top is all
// that a pinned rail gives it, so nothing of it is lost.
#include "demand/line/line_demand.h"
#include "demand/line/line_layout.h"

#include <Eigen/Core>

#include <vector>

namespace toehold::demand {

using PlanVector = Eigen::Vector2d;  ///< x, y of the project
using PlanMatrix = Eigen::Matrix2d;

/// What gives between the rail at a post and the ground, in/lb, in the project's axes.
struct TopFlexibility {
    PlanMatrix connection, post, base;
    [[nodiscard]] PlanMatrix total() const { return connection + post + base; }
};
[[nodiscard]] TopFlexibility top_flexibility(const LineInput& input, std::size_t post, bool stiff);

/// Numbers of a node's unknowns in `LineFrame::flexibility`.
enum PlanFreedom : std::size_t { move_x, move_y, turn_z, plan_freedoms };

struct PieceStiffness {
    double axial_lb = 0.0;
    double bending_lb_in2 = 0.0;  ///< as laid out level
};

struct LineFrame {
    bool stable = false;          ///< false: a part of the rail can move freely; then nothing else is given
    Eigen::MatrixXd flexibility;  ///< motion of each node's unknowns under a unit load on each, `plan_freedoms` a node
    std::vector<PieceStiffness> pieces;
    std::vector<PlanMatrix> posts;  ///< force on the post's top over the motion of the rail there, lb/in
    double residual = 0.0;
};

/// Of stiffness by post: what a corner says of it. Whoever takes its numbers looks at `residual` first.
[[nodiscard]] LineFrame solve_frame(const LineInput& input, const LineLayout& layout, const LineCorner& corner);

/// On posts that do not move: for loads straight down, which bend the rail upright. Its stiffness does not matter.
[[nodiscard]] LineFrame solve_on_rigid_posts(const LineLayout& layout);

}  // namespace toehold::demand
