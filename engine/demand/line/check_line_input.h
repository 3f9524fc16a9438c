#pragma once
// What the demand of a guard line refuses.
#include "demand/line/line_input.h"

namespace toehold::demand {

/// Throws std::invalid_argument that says what is out of range.
void check_line_input(const LineInput& input);

}  // namespace toehold::demand
