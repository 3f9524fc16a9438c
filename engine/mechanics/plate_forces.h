#pragma once
// From the plate's lift to what every anchor and patch carries, and how well that balances the load. Worked from the
// returned lift in inches by clipping each outline and summing pressure prisms, not from the solver's own integrals.
#include "mechanics/plane.h"
#include "mechanics/rigid_plate.h"

#include <span>

namespace toehold::mechanics {

/// Fills tensions, patches and residuals of `solution` from its lift and tilts.
void find_forces(RigidPlateSolution& solution, std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed,
                 const PlateLoad& load);

}  // namespace toehold::mechanics
