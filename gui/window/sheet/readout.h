#pragma once
// Lengths to be read and not typed back: a fraction where it is one, else no finer than a rule can tell.
#include "units/quantity.h"

#include <string>

namespace toehold::window {

/// To 1/32 in where within half a thousandth of it, else to 0.001 in; in SI to 0.1 mm. With its unit.
[[nodiscard]] std::string readout(double length_in, units::System system);

}  // namespace toehold::window
