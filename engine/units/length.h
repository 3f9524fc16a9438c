#pragma once
// Lengths as the trade writes them: feet and inches, and fractions of an inch.
#include "units/quantity.h"

#include <string_view>

namespace toehold::units {

inline constexpr double inches_per_foot = 12.0;

/// Reads `3'-0"`, `3 ft 6 1/2 in`, `3/8"`, `3-3/8 in`, `914 mm`. Text without blanks at its ends. A fraction is
/// proper and goes with feet or inches only; inches after feet are fewer than 12.
[[nodiscard]] Parsed parse_length(std::string_view text);

}  // namespace toehold::units
