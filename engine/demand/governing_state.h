#pragma once
// The state in which some quantity is largest.
#include "demand/demand.h"

#include <cstddef>

namespace toehold::demand {

struct GoverningState {
    double value = 0.0;
    std::size_t state = 0;
};

/// Of the first `count` places of some list, by `quantity(place)` -> double. The first of equal ones wins, so results
/// do not depend on chance.
template <class Quantity>
[[nodiscard]] GoverningState governing_among(std::size_t count, Quantity&& quantity) {
    GoverningState worst;
    for (std::size_t index = 0; index < count; ++index) {
        const double value = quantity(index);
        if (index == 0 || value > worst.value) worst = {value, index};
    }
    return worst;
}

/// Of all states, by `quantity(index of a state)` -> double.
template <class Quantity>
[[nodiscard]] GoverningState governing_index(const Demand& demand, Quantity&& quantity) {
    return governing_among(demand.states.size(), quantity);
}

/// The same of a `quantity(const State&)`.
template <class Quantity>
[[nodiscard]] GoverningState governing_state(const Demand& demand, Quantity&& quantity) {
    return governing_index(demand, [&](std::size_t index) { return quantity(demand.states[index]); });
}

}  // namespace toehold::demand
