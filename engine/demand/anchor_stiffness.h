#pragma once
// How stiff the bed and the anchors are, and where each value comes from. These values are uncertain by nature; the
// demand is found with each halved and doubled, and the largest is used.
#include "catalog/resolve.h"
#include "format/phrase.h"

namespace toehold::demand {

struct Stiffness {
    double value = 0.0;  ///< psi/in for a bed, lb/in for an anchor
    format::Phrase source;
};

/// Layers in series, each modulus through its thickness over its thickness, the load taken straight down (no spread):
/// decking and shims, then wood of this modulus of elasticity and depth. `below_modulus_psi` is along the grain; across
/// it one twentieth is taken. 0 depth: the layers alone.
[[nodiscard]] Stiffness bed_stiffness(const catalog::Resolved& resolved, double below_modulus_psi,
                                      double below_depth_in);

/// Thread slip in the wood (or bearing of the lower washer on it) and the shank's own stretch, in series.
[[nodiscard]] Stiffness anchor_stiffness(const catalog::Resolved& resolved, const catalog::Anchor& anchor);

}  // namespace toehold::demand
