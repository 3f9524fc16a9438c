#pragma once
// The part of `validate` that concerns a project's guard lines.
#include "model/problem_list.h"
#include "model/project.h"

namespace toehold::model {

/// What binds a rail (spacing, splices, which side its posts face) is asked only where the line states one, so that a
/// line that merely groups its posts stays as free as it was.
void check_guard_lines(ProblemList& problems, const Project& project);

/// Posts of a rail stand at least and at most so far apart, in plan, in; and splices so far from every post.
inline constexpr double closest_posts_in = 6.0;
inline constexpr double farthest_posts_in = 240.0;
/// Of the rail from the last post to a wall.
inline constexpr double least_reach_in = 1.0;
inline constexpr double closest_splice_in = 1.0;
/// The steepest rail of a line, above the level.
inline constexpr double steepest_rail_deg = 50.0;
/// A rail that turns by more at a post lies beside itself: ours.
inline constexpr double sharpest_turn_deg = 150.0;
/// A push of 200 lb moves a rail on a softer connection by feet: ours.
inline constexpr double softest_connection_lb_per_in = 10.0;

}  // namespace toehold::model
