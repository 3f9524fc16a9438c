#pragma once
// The pieces of packing through the boards, as what the plate bears on.
#include "catalog/resolve.h"
#include "model/placement.h"

#include <vector>

namespace toehold::demand {

struct PackingPiece {
    model::Position center;
    /// What it covers, seen from above: a round piece as the square of the same area, whose edge is nearer its center
    /// than the circle's (.443 of the diameter instead of .5), so that the lever arm is not overstated.
    model::PlanRectangle covers;
    double solid = 1.0;  ///< share of that area that is not hole, 0 to 1
};

/// One for every place of the packing; none without packing. A piece has a hole where an anchor goes through it.
[[nodiscard]] std::vector<PackingPiece> packing_pieces(const catalog::Resolved& resolved);

}  // namespace toehold::demand
