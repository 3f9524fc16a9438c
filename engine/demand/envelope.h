#pragma once
// From all states to what each anchor, the bed and the plate meet at worst.
#include "demand/solver.h"

#include <cstddef>

namespace toehold::demand {

/// The state in which the anchor pulls most.
[[nodiscard]] std::size_t worst_state_of(const Demand& demand, std::size_t anchor);

/// Fills `anchors`, `bending` and the peak of bearing from cases, scenarios and states.
void find_envelopes(Demand& demand, const Solver& solver, const catalog::Resolved& resolved);

}  // namespace toehold::demand
