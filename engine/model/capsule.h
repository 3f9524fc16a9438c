#pragma once
// A hole's shape in plan. A slot is every point within a radius of a segment, a round hole every point within a radius
// of its center; both are a capsule, in.
#include "model/segment.h"

namespace toehold::model {

struct Capsule {
    Segment axis;            ///< of a round hole: its center twice
    double radius_in = 0.0;  ///< half the diameter, or half the slot's width
};

[[nodiscard]] Capsule capsule(const Hole& hole);

}  // namespace toehold::model
