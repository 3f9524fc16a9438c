#pragma once
// The load at which a plate of perfectly plastic metal gives way, by CalculiX: two layers of quadratic wedges (C3D15),
// clamped at the post's outline and pulled up through the footprints of anchors until it moves without more force. Two
// layers, because three points of integration through a layer then meet the fully plastic moment exactly; through one
// layer they would give 0.86 of it.
//
// Small displacements: no membrane forces, which a real plate gains as it sags.
#include "mechanics/flexible_plate/plate_mesh.h"

#include <vector>

namespace toehold::test {

struct PlasticPlate {
    mechanics::Polygon outline;
    mechanics::Polygon foot;
    std::vector<mechanics::Footprint> pulled;  ///< all with one force; the plate stays elastic under them
    double thickness_in = 0.0;
    double modulus_psi = 29e6;
    double yield_psi = 36e3;
    double fineness = 1.2;
};

struct Collapse {
    double force_lb = 0.0;  ///< of each anchor, at the end of the movement
    double seconds = 0.0;
};

/// `moved_in`: how far the footprints go; a few times the elastic limit. Pulled on, a coarse mesh gains more and more.
[[nodiscard]] Collapse collapse_of(const PlasticPlate& plate, double moved_in);

}  // namespace toehold::test
