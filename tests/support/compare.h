#pragma once
// The one way tests compare numbers: absolute and relative tolerance are always both said.
#include <catch2/catch.hpp>

#include <cmath>

namespace toehold::test {

inline bool close(double actual, double expected, double relative, double absolute) {
    return std::abs(actual - expected) <= absolute + relative * std::abs(expected);
}

/// Half of the last printed digit: how close a printed value can be met.
inline bool prints_as(double actual, double printed, double last_digit) {
    return std::abs(actual - printed) <= 0.5 * last_digit * (1.0 + 1e-9);
}

}  // namespace toehold::test

// Fails with both numbers shown.
#define CHECK_CLOSE(actual, expected, relative, absolute)                                          \
    do {                                                                                           \
        const double actual_value_ = (actual);                                                     \
        const double expected_value_ = (expected);                                                 \
        INFO(#actual " = " << actual_value_ << ", expected " << expected_value_ << ", difference " \
                           << actual_value_ - expected_value_);                                    \
        CHECK(::toehold::test::close(actual_value_, expected_value_, (relative), (absolute)));     \
    } while (false)
