#pragma once
// What a post on a member's side is made of beside its anchors and the plates under them: what its search varies, and
// so must cost. Empty of another mount.
#include "catalog/resolve.h"

#include <vector>

namespace toehold::search {

/// One piece of sawn wood.
struct WoodPiece {
    double width_in = 0.0, depth_in = 0.0;  ///< its section
    double length_in = 0.0;
};

/// The wood post, from its lower end to the guard's top, and the pieces beside the first of the rim or joist it is
/// fastened to.
[[nodiscard]] std::vector<WoodPiece> side_wood(const catalog::Resolved& resolved);

/// Ties, and the joints of joists to the rim that is fastened to by hardware: each is priced as hardware.
[[nodiscard]] int side_connectors(const catalog::Resolved& resolved);

}  // namespace toehold::search
