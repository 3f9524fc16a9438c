#pragma once
// The joint between a post and the side of a member as the mechanics wants it: where the post bears, how stiffly, and
// what its section is. Plain facts of the detail; no load.
#include "catalog/resolve.h"
#include "demand/anchor_stiffness.h"
#include "mechanics/side_post/side_post.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace toehold::demand {

/// A stretch of the overlap where the post, its bracket or a layer lies on the member's face. Heights up from the
/// member's top edge, in.
struct ContactStretch {
    double from_z_in = 0.0, to_z_in = 0.0;
};

struct SideContact {
    std::vector<ContactStretch> stretches;  ///< upward, apart from each other; empty: nothing bears
    double width_in = 0.0;                  ///< along the rail
    Stiffness stiffness;                    ///< psi/in, nominal
};

/// The overlap of post (or bracket plate) and member, less what no layer covers. On a stringer the rectangle that lies
/// within its sloped edges.
[[nodiscard]] SideContact side_contact(const catalog::Resolved& resolved);

/// The block behind the member that takes what the post presses on, pressed through the member: every anchor goes into
/// it, it lies tight against the member's back, and it reaches as low as the contact. Absent: the member itself does.
[[nodiscard]] std::optional<std::size_t> carried_by(const catalog::Resolved& resolved, const SideContact& contact);

/// Of the post over its whole height; a notched one has its smaller section throughout.
[[nodiscard]] mechanics::PostSection post_section(const catalog::Resolved& resolved);

/// Slip of one fastener across its axis, lb/in: 180,000 D^1.5 between wood and wood, 270,000 D^1.5 between wood and
/// metal (NDS 2018 11.3.6), read across to every diameter, alike in all directions.
[[nodiscard]] Stiffness fastener_slip(const catalog::Resolved& resolved, const catalog::Anchor& anchor);

/// Of a tie: its allowable pull over its movement there.
[[nodiscard]] double tie_lb_per_in(const model::TensionTie& tie);

}  // namespace toehold::demand
