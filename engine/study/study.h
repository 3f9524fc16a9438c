#pragma once
// What a detail's numbers do when its inputs change: ratios over one input, the input that matters most, what holds
// over two inputs, and where a dragged thing may stand. Every number is the whole engine's, unless it says that it is
// provisional; nothing is extrapolated.
#include "study/field.h"
#include "study/holding_map.h"
#include "study/judged.h"
#include "study/region.h"
#include "study/sweep.h"
#include "study/tornado.h"

#include <variant>

namespace toehold::study {

/// What a chart can be made of.
using AnyStudy = std::variant<Sweep, Tornado, HoldingMap>;

}  // namespace toehold::study
