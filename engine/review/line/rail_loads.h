#pragma once
// What pushes on a line's rail: the code's and the file's loads, and wind on the infill, in the standard's
// combinations.
#include "checks/rail/rail.h"
#include "demand/demand.h"
#include "review/line/solve_line.h"

#include <vector>

namespace toehold::review {

/// Loads that act at once, and how long they last.
struct RailCombination {
    checks::RailLoads loads;
    demand::LoadDuration duration = demand::LoadDuration::guard_live;
};

/// The guard's loads alone first; where the file has wind, wind alone and, unless the file says that nobody leans on
/// the guard in a storm, both (ASCE 7-16 2.4.1 and 2.3.1, as of the bases). `detail`: of one of the line's posts.
[[nodiscard]] std::vector<RailCombination> rail_combinations(const SolvedLine& solved, const model::BaseDetail& detail);

/// Wind on the infill as it reaches the rail, lb/in along it, at the level of the file's pressure; 0: no wind. The rail
/// takes of the infill's wind what statics gives it where the infill is held at the rail and at the walking surface:
/// the height of the pressure's center over the rail's. Of an area stated for a post, over the length the file states
/// for it, else over the shortest half of the spans beside a post.
[[nodiscard]] double rail_wind_lb_per_in(const SolvedLine& solved, const model::BaseDetail& detail);

/// The part of a load the user states at some height that reaches the rail, as of wind: its height over the rail's.
[[nodiscard]] double part_on_rail(const model::BaseDetail& detail, const model::UserLoad& load);

/// What was taken of wind and of loads the user states, a sentence each.
void add_load_assumptions(std::vector<format::Phrase>& all, const SolvedLine& solved, const model::BaseDetail& detail);

}  // namespace toehold::review
