#pragma once
// What an anchor holds together: the part under its head, and what lies between that part and the framing member.
// Each kind of mount says here what its anchors pass through; checks of anchors read it and know no mount.
#include "catalog/resolve.h"

#include <vector>

namespace toehold::catalog {

/// What is under the head, the side member of the joint: a plate, a tube's wall, or the post itself.
struct SideMember {
    Metal metal;                                        ///< of no meaning where `wood` is there
    double thickness_in = 0.0;                          ///< along the anchor, > 0
    double width_x_in = 0.0, width_y_in = 0.0;          ///< its size in the anchor's plane
    std::optional<MemberMaterial> wood = std::nullopt;  ///< a wood post, its grain upright
    /// What of the thickness bears on the shank next to the member: a tube's wall; else all of it.
    double bears_in = 0.0;
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

/// From under the anchor's head to the face of the framing member, its washer or head plate included, in.
[[nodiscard]] double above_member_in(const Resolved& resolved, const Anchor& anchor);

/// Thickness of what lies between a through-bolt's nut and the wood, in: a washer, a plate of its own, or the lower
/// plate of its group; 0 where the nut bears on the wood itself.
[[nodiscard]] double below_in(const Anchor& anchor);

}  // namespace toehold::catalog
