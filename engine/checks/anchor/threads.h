#pragma once
// Where an anchor's threads lie, and which diameter and which shear stress that leaves it.
//   - NDS 2018 12.3.7.2: the full diameter of a fastener with a full-body shank counts in the yield equations where
//     threads take no more than a quarter of the bearing length in the member that holds them; else the root.
//   - AISC 360-16 Table J3.2: a bolt whose threads stay out of the shear plane has the larger nominal shear stress. The
//     plane is where plate and framing slide on each other, wherever that is in the layers between them.
// A bolt's threads follow from its length; where the file gives none, they count as lying in both unless it says
// otherwise.
#include "checks/result.h"

namespace toehold::catalog {
struct Anchor;
struct Resolved;
}  // namespace toehold::catalog

namespace toehold::checks {

struct ThreadPlace {
    bool full_diameter = false;  ///< D counts in the wood, not the root
    bool clear_of_plane = false;
    format::Phrase reason;  ///< how that is known
};

/// Of a lag screw or a through-bolt that lands; others have their root, and threads in the plane.
[[nodiscard]] ThreadPlace thread_place(const catalog::Resolved& resolved, const catalog::Anchor& anchor);

}  // namespace toehold::checks
