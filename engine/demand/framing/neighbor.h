#pragma once
// Another post on the same framing, which may face another way: its demand numbers the ends of blocks and signs forces
// as that post sees the framing, and has to be read in the axes of the post beside it.
#include "demand/demand.h"
#include "model/facing.h"
#include "model/member.h"

#include <cstddef>
#include <vector>

namespace toehold::demand {

/// A place where a member is held, of one post's demand, as another post sees it.
struct TurnedSupport {
    std::size_t of_other = 0;  ///< its number in the other's demand
    double across = 1.0;       ///< 1 or -1: what the other's force across the member is times, to be read here
    double torque = 1.0;       ///< the same of the torque about the member's axis
    double moment = 1.0;       ///< and of the moment in its upright plane. Up and along mean the same to both
};

struct Neighbor {
    const Demand* demand = nullptr;
    /// To be added to the other's directions, so that they are the own post's, counterclockwise from its +x.
    double turn_rad = 0.0;
    std::vector<TurnedSupport> supports = {};  ///< one for each of the own; empty: both face one way
    double times = 1.0;                        ///< of its states' load acts beside the own
};

/// `own`, `other`: the demands of two posts on one framing. `members`: of that framing in the project's axes.
[[nodiscard]] Neighbor neighbor(const std::vector<model::Member>& members, const Demand& own,
                                model::PostFacing own_facing, const Demand& other, model::PostFacing other_facing);

/// What is at the own post's place number `support`, of a state of the neighbor.
[[nodiscard]] SupportReaction reaction_at(const Neighbor& neighbor, const FramingState& state, std::size_t support);

}  // namespace toehold::demand
