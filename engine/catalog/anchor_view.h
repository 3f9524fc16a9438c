#pragma once
// A framing member as an anchor meets it. Rules for fasteners in wood are about three directions: along the grain,
// across it on the face the fastener enters, and along the fastener. Upright anchors see a member from above; those of
// a post on a member's side see it from that side. Whoever checks an anchor reads places, sizes and forces this way and
// need not know how the anchor lies.
//
// An anchor's view is its plane: x is along the rail in both; y is the plan's y for an upright anchor and the height z
// for a level one. The shear of `demand::AnchorForce` is in the same plane.
#include "catalog/resolve.h"
#include "model/member.h"

namespace toehold::catalog {

/// Whether the anchor is driven from a side rather than from above.
[[nodiscard]] bool lies_level(const Anchor& anchor);

/// The anchor's place in its own plane.
[[nodiscard]] model::Position seen(const Anchor& anchor);
/// Any place in that plane.
[[nodiscard]] model::Position seen(const Anchor& anchor, const model::Place& place);

/// The member as the anchor sees it: `depth_in` is its size along the anchor and `width_in` its size across the grain,
/// centered at `across_in`. On its side, plies become pieces one on another that count as nailed together. The top of
/// the member is at z = 0 of a post on its side.
[[nodiscard]] model::Member seen_member(const Resolved& resolved, const Anchor& anchor, std::size_t member);
/// The one it is seated in; throws std::bad_optional_access without a seat.
[[nodiscard]] model::Member seen_member(const Resolved& resolved, const Anchor& anchor);

}  // namespace toehold::catalog
