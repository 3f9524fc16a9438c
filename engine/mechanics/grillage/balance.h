#pragma once
// The balance of a solved grillage, from the forces given back alone.
#include "mechanics/grillage/member.h"

#include <vector>

namespace toehold::mechanics {

struct BalanceInput {
    std::span<const Point> nodes;
    std::span<const PreparedMember> members;
    std::span<const GridJoint> joints;  ///< each with its place
    double reach_in = 0.0;              ///< the grid's size
    std::span<const GridLoad> loads;
    std::span<const MemberLoad> member_loads;
};

/// Largest lack of balance at a node or of a member over the largest load, moments over the grid's size; 0 without
/// a load.
[[nodiscard]] double lack_of_balance(const BalanceInput& input, const GridSolution& solution);

}  // namespace toehold::mechanics
