#pragma once
// Lag screws for arithmetic: ASME B18.2.1 dimensions as in NDS Table L2; tips from 5/8 in up read in a public
// transcription, smaller ones from memory except 3/8 in (modes III_s and IV do not feel them).
#include <array>
#include <stdexcept>

namespace toehold::test {

struct Lag {
    double diameter_in, root_in, tip_in;
};
inline constexpr std::array lags{
    Lag{0.25, 0.173, 5.0 / 32},   Lag{0.3125, 0.227, 3.0 / 16}, Lag{0.375, 0.265, 7.0 / 32},
    Lag{0.4375, 0.328, 9.0 / 32}, Lag{0.5, 0.371, 5.0 / 16},    Lag{0.625, 0.471, 13.0 / 32},
    Lag{0.75, 0.579, 1.0 / 2},    Lag{0.875, 0.683, 19.0 / 32}, Lag{1.0, 0.780, 11.0 / 16}};

inline const Lag& lag(double diameter_in) {
    for (const Lag& each : lags) {
        if (each.diameter_in == diameter_in) return each;
    }
    throw std::invalid_argument("no such lag screw");
}

}  // namespace toehold::test
