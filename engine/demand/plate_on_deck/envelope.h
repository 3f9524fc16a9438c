#pragma once
// From all states to what only a plate on the deck has: hand values, the peak of bearing, what its bending does.
#include "demand/plate_on_deck/plate_solver.h"

namespace toehold::demand {

/// Fills the hand values of `anchors`, the peak of bearing and `bending`.
void add_plate_envelopes(Demand& demand, const PlateSolver& solver, const model::BaseDetail& detail);

}  // namespace toehold::demand
