#pragma once
// What the demand takes for granted, in sentences for the reader of the review.
#include "demand/solver.h"

#include <string>
#include <vector>

namespace toehold::demand {

[[nodiscard]] std::vector<std::string> demand_assumptions(const Solver& solver, const model::BaseDetail& detail);

}  // namespace toehold::demand
