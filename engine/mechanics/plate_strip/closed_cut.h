#pragma once
// Cuts right round the post, at one distance from its outline, through openings in the plate: what metal they leave
// between post and plate. A straight section sees of a row of slots around the post no more than one or two.
#include "mechanics/plate_strip/section.h"

#include <span>
#include <vector>

namespace toehold::mechanics {

/// Metal without a break along the cut.
struct CutPiece {
    std::vector<Point> places;  ///< from end to end, two or more
    double length_in = 0.0;
    bool between_openings = false;  ///< both ends lie at openings
    double across_in = 0.0;         ///< the wider of the openings at its ends, away from the post
};

struct ClosedCut {
    double offset_in = 0.0;  ///< from the post's outline
    std::vector<CutPiece> pieces;
};

/// Through the middle and both ends of every opening that lies beyond the post. Parts off the plate have no metal.
[[nodiscard]] std::vector<ClosedCut> closed_cuts(const FootOutline& foot, const Polygon& outline,
                                                 std::span<const PlateHole> openings);

}  // namespace toehold::mechanics
