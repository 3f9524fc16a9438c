#pragma once
// What the demand takes for granted, in sentences for the reader of the review.
#include "demand/plate_on_deck/plate_solver.h"

#include <string>
#include <vector>

namespace toehold::demand {

[[nodiscard]] std::vector<std::string> plate_assumptions(const PlateSolver& solver, const model::BaseDetail& detail);

}  // namespace toehold::demand
