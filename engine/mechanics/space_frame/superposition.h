#pragma once
// Solutions of one space frame, added.
#include "mechanics/space_frame/space_frame.h"

namespace toehold::mechanics {

/// Adds `factor` times a part; a sum without motions becomes that. What follows from the sum of the loads, since small
/// motions add; the residual is bounded by the parts', as if all were of the same load. Not stable if one is not.
/// Throws std::invalid_argument where both are not of one frame.
void add_scaled(SpaceSolution& sum, double factor, const SpaceSolution& part);

}  // namespace toehold::mechanics
