#pragma once
// Numbers for people: four significant digits, in the reader's units. Data for programs is never rounded.
#include "units/quantity.h"

#include <string>
#include <string_view>

namespace toehold::format {

struct Figure {
    double value = 0.0;
    std::string unit;
};

/// The value in the reader's system. `unit` is one of the engine's, as checks name it (`lb`, `in`, `psi`, `lb-in`,
/// `lb/in`, `psi/in`, `in2` ...); a unit without an SI counterpart here is left as it is.
[[nodiscard]] Figure in_system(double value, std::string_view unit, units::System system);

/// Four significant digits, without trailing zeros; `-` when there is no finite number. At most ten characters.
[[nodiscard]] std::string number_text(double value);
/// Number only, in the reader's system.
[[nodiscard]] std::string number_text(double value, std::string_view unit, units::System system);
/// Number and unit.
[[nodiscard]] std::string figure_text(double value, std::string_view unit, units::System system);
/// Demand over capacity with two decimals, or as many more as it takes not to read as 1.00 what is not 1.
/// `-` when infinite.
[[nodiscard]] std::string ratio_text(double ratio);
/// A direction in whole degrees from 0 to 359, or with decimals where it is not whole.
[[nodiscard]] std::string degrees_text(double degrees);
[[nodiscard]] double degrees(double radians);

}  // namespace toehold::format
