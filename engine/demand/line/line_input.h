#pragma once
// A line of guard as the mechanics meets it: posts that give way at their tops, and the rail from one to the next.
// Lengths in, forces lb, angles rad counterclockwise in plan from the project's +x; z up.
//
// A rail is pinned to its posts about every axis, so that a post meets a level force at its top and nothing else, just
// as its base is reviewed. What the rail's stiffness against twisting a post or rocking it along the rail would add to
// the sharing is left out, which is on the safe side.
#include "demand/line/base_stiffness.h"
#include "model/guard_line.h"
#include "model/loads.h"
#include "model/place.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::demand {

/// How far the post's top goes for 1 lb there by the post's own bending, its foot held; in/lb, >= 0. Of
/// `checks::post_stiffness`: `bent_in(post, 1.0, h, h, along_y)` with h = `model::lever_height_in`, and `along_y` 1 for
/// `along_y_in_per_lb` and 0 for the other.
struct PostFlexibility {
    double along_y_in_per_lb = 0.0;  ///< pushes outward and inward
    double along_x_in_per_lb = 0.0;
    friend bool operator==(const PostFlexibility&, const PostFlexibility&) = default;
};

struct LinePost {
    std::string id;
    model::Position at;        ///< of its axis, where the rail lies
    double rise_in = 0.0;      ///< of the rail above some level common to the line; differs along a stair
    double outward_rad = 0.0;  ///< where the +y of its mount points: pi/2 + `model::turn_rad(facing)`
    double height_in = 0.0;    ///< of the rail above the bearing plane, `model::lever_height_in`, > 0
    /// Metal: both alike. Wood: its modulus of elasticity is known to a factor, so that two values are asked for.
    PostFlexibility soft_post, stiff_post;
    BaseStiffnessRange base;
    /// Turn from upright until the post bears on the stub or shoe that holds it, `checks::PostStiffness::play_rad`, >=
    /// 0.
    double play_rad = 0.0;
};

/// The whole rail's, everywhere alike. Its give in shear is left out: beside its bending between posts 6 ft apart 5 %
/// of a wood 4x4's, less of any tube's, which is within what its modulus of elasticity may be off.
struct RailStiffness {
    double axial_lb = 0.0;        ///< E A, > 0
    double in_plan_lb_in2 = 0.0;  ///< E I about the upright axis, for level pushes, > 0
    friend bool operator==(const RailStiffness&, const RailStiffness&) = default;
};

/// Beyond the first or last post, straight on.
struct LineWall {
    double reach_in = 0.0;  ///< from the post's axis, level, > 0
    bool holds = false;     ///< a connection to the wall is described; otherwise the rail ends there in the air
    std::optional<double> stiffness_lb_per_in = std::nullopt;  ///< of that connection, level; absent: rigid
};

struct LineInput {
    std::vector<LinePost> posts;  ///< two or more, in order
    /// Both alike but for wood, as of posts. Sharing is found with the soft rail too, its moments with the stiff one.
    RailStiffness soft_rail, stiff_rail;
    model::RailRun run = model::RailRun::broken;
    bool corners_rigid = false;           ///< as `model::Rail::corners_rigid`
    std::vector<double> splices_in = {};  ///< as `model::Rail::splices_in`
    /// Rail to post, level; absent: rigid. A broken or let-in rail has one at each of its ends, so that a post passes
    /// on what comes along the rail through two.
    std::optional<double> connection_lb_per_in = std::nullopt;
    std::optional<LineWall> first_wall = std::nullopt, last_wall = std::nullopt;
    /// From where the loads on the rail come: `code_directions`, the widest of the line's posts. All round: every level
    /// direction. Otherwise both ways square to the stretch of rail they stand on: outward alone is no less.
    model::Directions directions = model::Directions::all_round;
};

}  // namespace toehold::demand
