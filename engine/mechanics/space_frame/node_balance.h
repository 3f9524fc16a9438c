#pragma once
// The balance of a solved space frame, from the forces given back alone.
#include "mechanics/space_frame/assembly.h"

namespace toehold::mechanics::space_frame {

struct BalanceInput {
    std::span<const SpaceVector> nodes;
    const Assembly& assembly;
    double reach_in = 0.0;  ///< the frame's size
    std::span<const SpaceNodeLoad> loads;
    std::span<const AlongLoad> along;
};

/// Largest lack of balance at a node over the largest load, moments over the frame's size; 0 without a load.
[[nodiscard]] double lack_of_balance(const BalanceInput& input, const SpaceSolution& solution);

}  // namespace toehold::mechanics::space_frame
