#pragma once
// Everything that is wrong with a detail's or a plate's geometry and numbers, at once. What a code asks of a
// sound detail is for the checks; this is for what cannot be built or computed at all.
#include "model/base_detail.h"
#include "model/problem.h"

namespace toehold::model {

[[nodiscard]] Problems validate(const Plate& plate);
[[nodiscard]] Problems validate(const BaseDetail& detail);

}  // namespace toehold::model
