#pragma once
// The state in which some quantity is largest.
#include "demand/demand.h"

#include <cstddef>

namespace toehold::demand {

struct GoverningState {
    double value = 0.0;
    std::size_t state = 0;
};

/// `quantity(const State&)` -> double. The first of equal states wins, so results do not depend on chance.
template <class Quantity>
[[nodiscard]] GoverningState governing_state(const Demand& demand, Quantity&& quantity) {
    GoverningState worst;
    bool first = true;
    for (std::size_t index = 0; index < demand.states.size(); ++index) {
        const double value = quantity(demand.states[index]);
        if (first || value > worst.value) worst = {value, index};
        first = false;
    }
    return worst;
}

}  // namespace toehold::demand
