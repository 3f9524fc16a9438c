#pragma once
// Numbers drawn inside a RapidCheck property.
#include <rapidcheck.h>

#include <cmath>

namespace toehold::test {

/// Evenly spread, in thousandths of the range.
[[nodiscard]] inline double number(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
}

/// Evenly spread in its logarithm; both bounds above 0.
[[nodiscard]] inline double magnitude(double low, double high) { return low * std::pow(high / low, number(0.0, 1.0)); }

}  // namespace toehold::test
