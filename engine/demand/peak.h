#pragma once
// Between the directions sampled: the one in which an anchor pulls most.
#include "demand/mount.h"

#include <cstddef>

namespace toehold::demand {

/// Loads with fewer directions ask for those alone.
inline constexpr std::size_t fewest_all_round = 8;

/// One state of the demand's cases and scenarios, by their numbers. Throws as `MountSolver::solve`.
[[nodiscard]] State solve_state(const Demand& demand, MountSolver& solver, std::size_t load_case, std::size_t scenario,
                                double direction_rad);

/// Adds the state in which the anchor's tension is largest under loads of that duration, where that is more than in any
/// direction sampled. The states sampled are there already, one of that duration at least.
void add_peak(Demand& demand, MountSolver& solver, std::size_t anchor, LoadDuration duration);

}  // namespace toehold::demand
