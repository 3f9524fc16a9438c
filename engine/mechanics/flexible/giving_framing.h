#pragma once
// Framing under a plate that gives way: each support of the bed moves as one rigid piece, by a lift and two tilts about
// its own place, and so do the anchors that are fastened into it.
#include "mechanics/geometry.h"

#include <vector>

namespace toehold::mechanics {

struct GivingFraming {
    std::vector<Point> places;  ///< one for every rectangle of the bed
    /// Forces on the framing from its motions, both in the order lift, tilt_x, tilt_y of each place: lb and lb in from
    /// in and rad. 3n x 3n row by row, symmetric and positive definite.
    std::vector<double> stiffness;
};

}  // namespace toehold::mechanics
