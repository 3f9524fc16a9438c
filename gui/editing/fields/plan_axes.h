#pragma once
// Which way a part runs in plan, as the forms offer it.
#include "editing/fields/form.h"
#include "format/phrase.h"
#include "model/base_detail.h"

#include <array>

namespace toehold::editing {

inline const std::array<Word<model::PlanAxis>, 2> plan_axes{
    {{model::PlanAxis::x, "x", phrase("Along the rail")}, {model::PlanAxis::y, "y", phrase("Square to the rail")}}};

}  // namespace toehold::editing
