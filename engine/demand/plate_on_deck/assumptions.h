#pragma once
// What the demand of a plate on the deck takes for granted, for the reader of the review.
#include "demand/plate_on_deck/plate_solver.h"

#include <vector>

namespace toehold::demand {

[[nodiscard]] std::vector<format::Phrase> plate_assumptions(const PlateSolver& solver, const model::BaseDetail& detail);

}  // namespace toehold::demand
