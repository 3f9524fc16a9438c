#pragma once
// How an anchor stands in the member it lands in: what the checks of anchors in wood read, and the steps they share.
#include "checks/basis/result_parts.h"
#include "checks/registry.h"

#include <cstddef>
#include <string>
#include <vector>

namespace toehold::catalog {
struct Anchor;
struct MemberMaterial;
}  // namespace toehold::catalog
namespace toehold::model {
struct Member;
}

namespace toehold::checks {

/// Lengths along one anchor, from its head's underside on; in.
struct Seating {
    double plate_in = 0.0;         ///< the side member: a plate, or a post the anchor crosses
    double washer_in = 0.0;        ///< under the head, or the plate in its place
    double layers_in = 0.0;        ///< between side member and member
    double above_member_in = 0.0;  ///< the three together
    double embedment_in = 0.0;     ///< in the member, tip included
    double tip_in_member_in = 0.0;
    double thread_in_member_in = 0.0;  ///< that holds: tip excluded
};

/// Whether the anchor's hole lies wholly in one piece of a member: none of it in a seam, a face or an end. The anchor
/// must have a seat.
[[nodiscard]] bool within_one_piece(const catalog::Anchor& anchor);
/// Whether a member is under the anchor, with the hole in one piece of it, and the anchor reaches into it.
[[nodiscard]] bool lands(const catalog::Anchor& anchor);
/// Of the member's grain against x, in the anchor's plane: that of a stair's stringer, else 0.
[[nodiscard]] double grain_slope_rad(const catalog::Resolved& resolved, const catalog::Anchor& anchor);
/// A bolt with nothing between its nut and the wood.
[[nodiscard]] bool bears_on_wood(const catalog::Anchor& anchor);
/// The anchor must land.
[[nodiscard]] Seating seating(const catalog::Resolved& resolved, const catalog::Anchor& anchor);
/// The member as the anchor sees it: `catalog::seen_member`.
[[nodiscard]] model::Member member_of(const catalog::Resolved& resolved, const catalog::Anchor& anchor);
[[nodiscard]] const catalog::MemberMaterial& wood_of(const catalog::Resolved& resolved, const catalog::Anchor& anchor);

[[nodiscard]] model::PartId part_of(const catalog::Anchor& anchor);
/// The block, joist or rim the anchor stands in, which must have a seat.
[[nodiscard]] model::PartId member_part(const catalog::Resolved& resolved, const catalog::Anchor& anchor);
/// Its name, for a sentence; `side_name` that of what is under the anchor's head.
[[nodiscard]] format::Phrase member_name(const catalog::Resolved& resolved, const catalog::Anchor& anchor);
[[nodiscard]] format::Phrase side_name(const catalog::Resolved& resolved, const catalog::Anchor& anchor);

/// From the screw's length down to its embedment: length, each deduction, embedment.
[[nodiscard]] std::vector<Step> embedment_steps(const catalog::Resolved& resolved, const catalog::Anchor& anchor);

/// A result for one anchor, its part set; the direction is that of its largest tension when `pulled`.
[[nodiscard]] CheckResult anchor_result(const CheckInput& input, std::size_t anchor, bool pulled);

}  // namespace toehold::checks
