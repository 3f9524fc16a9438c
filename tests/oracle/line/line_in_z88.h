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
#include "oracle/z88/beams.h"

#include <Eigen/Core>

#include <cstddef>
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

/// On a span of the line, a wall's stretch first and last where there is one; level, from its start.
struct RailPlace {
    std::size_t span = 0;
    double along_in = 0.0;
};

struct RailPush {
    RailPlace at;
    double direction_rad = 0.0;  ///< in the project's plan
};

/// Sizes, per lb of push; the moment about what is square to the rail and to its level pushes.
struct RailSection {
    double axial_lb = 0.0, shear_lb = 0.0, moment_lb_in = 0.0;
};

class LineSolution {
  public:
    /// A stretch of the rail in plan.
    struct Leg {
        Eigen::Vector2d start, along;
        double plan_in = 0.0, true_over_plan = 1.0;
        double station_in = 0.0;   ///< of its start from the first post
        std::size_t first_post = 0;  ///< posts before it and at its start
    };
    LineSolution(std::vector<Leg> legs, std::vector<Eigen::Vector2d> post_at, RailPush push)
        : legs_(std::move(legs)), post_at_(std::move(post_at)), push_(push) {}

    std::vector<Eigen::Vector2d> posts;         ///< force on each post's top
    std::vector<Eigen::Vector2d> post_motions;  ///< of the rail there
    std::vector<Eigen::Vector2d> span_motions;  ///< of each span's middle, or of its end in the air

    /// Of the part toward the line's first post: with a push at the very place counted or not.
    [[nodiscard]] RailSection section(const RailPlace& place, bool with_push) const;
    /// What a wall behind the last post takes.
    [[nodiscard]] Eigen::Vector2d last_wall() const;

  private:
    [[nodiscard]] Eigen::Vector2d push() const;

    std::vector<Leg> legs_;
    std::vector<Eigen::Vector2d> post_at_;
    RailPush push_;
};

/// A push of 1 lb, posts and rail at the ends of their ranges that the corner names.
[[nodiscard]] LineSolution solve_line_with_z88(const LineProject& project, const demand::LineCorner& corner,
                                               const RailPush& push);

}  // namespace toehold::test
