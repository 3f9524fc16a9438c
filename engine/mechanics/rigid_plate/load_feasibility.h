#pragma once
// Whether supports that act one way only can balance a load at all.
//
// Anchors push the plate's generalised force by -phi, bed points by +phi, with any factor that is not negative; what
// they can balance is a convex cone. A load outside it leaves a remainder r when projected onto the cone, and r is a
// rigid motion that raises no anchor, presses no bed and on which the load does the work |r|^2 > 0: the energy falls
// without end along it. That motion is the certificate that nothing can balance the load (Farkas' lemma); it is
// checked against every anchor and bed corner before it is believed.
#include "mechanics/rigid_plate/scaled_plate.h"

#include <optional>

namespace toehold::mechanics {

/// A certified motion of unit length. Empty when the load lies in the cone, or outside it by less than 1e-9 of it.
[[nodiscard]] std::optional<Eigen::Vector3d> unresisted_motion(const ScaledPlate& plate);

}  // namespace toehold::mechanics
