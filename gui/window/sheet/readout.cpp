#include "window/sheet/readout.h"

#include "editing/fields.h"

#include <cmath>

namespace toehold::window {

namespace {

double rounded(double value, double step) { return std::round(value / step) * step; }

}  // namespace

std::string readout(double length_in, units::System system) {
    constexpr double mm = 1 / 25.4, fraction = 1.0 / 32, thousandth = 1e-3;
    if (system == units::System::si)
        return units::display(rounded(length_in, 0.1 * mm), units::Kind::length, system, 1);
    const double nearest = rounded(length_in, fraction);
    if (std::abs(nearest - length_in) < thousandth / 2) return editing::shown(nearest, units::Kind::length, system);
    return units::display(length_in, units::Kind::length, system, 3);
}

}  // namespace toehold::window
