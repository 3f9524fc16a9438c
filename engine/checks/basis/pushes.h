#pragma once
// The pushes a demand has states of. What acts above the plate knows nothing of its stiffness: of all states under one
// push, the first speaks for the others.
#include "checks/registry.h"
#include "demand/demand.h"
#include "demand/governing_state.h"

#include <cstddef>
#include <memory>
#include <vector>

namespace toehold::checks {

/// The first state of every case and direction, in order.
struct Pushes {
    std::vector<std::size_t> states;
    /// A larger push is still one of them.
    [[nodiscard]] Pushes grown(double) const { return *this; }
};
[[nodiscard]] std::shared_ptr<const Pushes> pushes(const CheckInput& input);

/// As `demand::governing_state` for a quantity that is the same in all states of one case and direction.
template <class Quantity>
[[nodiscard]] demand::GoverningState governing_push(const CheckInput& input, Quantity&& quantity) {
    const auto all = pushes(input);
    const std::vector<std::size_t>& states = all->states;
    demand::GoverningState worst = demand::governing_among(
        states.size(), [&](std::size_t push) { return quantity(input.demand.states[states[push]]); });
    if (!states.empty()) worst.state = states[worst.state];
    return worst;
}

}  // namespace toehold::checks
