#pragma once
// What an anchor holds together: the metal part under its head, and what lies between that part and the framing member.
// A second kind of mount says here what its anchors pass through; checks of anchors read it and know no mount.
#include "catalog/resolve.h"

#include <vector>

namespace toehold::catalog {

/// The metal part under the head: the side member of the joint.
struct SideMember {
    Metal metal;
    double thickness_in = 0.0;                  ///< along the anchor, > 0
    double width_x_in = 0.0, width_y_in = 0.0;  ///< its size along the plan axes
};

/// A layer between the side member and the framing member.
struct Interlayer {
    DeckingMaterial material;
    double thickness_in = 0.0;
    bool loose = false;  ///< packing, which stands beside the shank and holds it against nothing
};

struct Fastened {
    SideMember side;
    std::vector<Interlayer> layers;  ///< in order from the side member

    [[nodiscard]] double layers_in() const;
};

[[nodiscard]] Fastened fastened_by(const Resolved& resolved, const Anchor& anchor);

/// From under the anchor's head to the face of the framing member, its washer included, in.
[[nodiscard]] double above_member_in(const Resolved& resolved, const Anchor& anchor);

/// Thickness of what lies between a through-bolt's nut and the wood, in: a washer, a plate of its own, or the lower
/// plate of its group; 0 where the nut bears on the wood itself.
[[nodiscard]] double below_in(const Anchor& anchor);

}  // namespace toehold::catalog
