#pragma once
// The anchors that share one member: the rows they stand in, what the standard takes off their lateral values for
// standing close to an end or to each other, and how deep they take hold of it.
#include "catalog/resolve.h"
#include "demand/demand.h"
#include "model/member.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace toehold::checks {

/// Every anchor that lands in the same member as `index`, itself included, in the plate's order. The anchor must land.
[[nodiscard]] std::vector<std::size_t> member_mates(const catalog::Resolved& resolved, std::size_t index);

/// One anchor in the member, or all of them on one line along its grain (within the largest diameter).
[[nodiscard]] bool single_row_along_grain(const catalog::Resolved& resolved, std::size_t index);

/// Cg, NDS 2018 11.3.6, for the anchor's row along the grain and its row across it, the lesser. Uneven spacing counts
/// as the widest. The side member is a plate, a tube's wall or a wood post.
[[nodiscard]] double row_factor(const catalog::Resolved& resolved, std::size_t index);

/// What no state changes of the geometry factor of the anchors in the member of `index`.
struct MatesPlacement {
    struct Mate {
        std::size_t anchor = 0;
        double diameter_in = 0.0;
        double to_lower_in = 0.0, to_upper_in = 0.0;  ///< to the member's ends
    };
    std::vector<Mate> mates;
    model::PlanAxis grain = model::PlanAxis::x;
    double spacing_factor = 1.0;  ///< the least of any two
    bool pushed_back = false;     ///< of a side member, on which anchors press against the force the post puts on them
};
[[nodiscard]] MatesPlacement mates_placement(const catalog::Resolved& resolved, std::size_t index);
/// The same of all anchors in the wood post they are driven through, its lower end the only one near; absent for a side
/// member of metal.
[[nodiscard]] std::optional<MatesPlacement> post_placement(const catalog::Resolved& resolved, std::size_t index);
/// CDelta, NDS 2018 12.5.1: the least of the member's anchors in this state, for their end distances in the sense each
/// one's force acts, and for the spacing of any two. 0 where a distance is below the least permitted.
[[nodiscard]] double geometry_factor(const MatesPlacement& placement, const demand::State& state);

/// Whether the anchor lands in the member with this number.
[[nodiscard]] bool stands_in(const catalog::Anchor& anchor, std::size_t member);
/// From the member's near face, an upright anchor's top, to where the anchor still holds, in: the end of its full
/// thread, the whole depth along it for a through-bolt, never below 0. The anchor must land.
[[nodiscard]] double reached_in(const catalog::Resolved& resolved, const catalog::Anchor& anchor);
/// The shallowest reach of the member's anchors; its depth where none stands in it.
[[nodiscard]] double least_reached_in(const catalog::Resolved& resolved, std::size_t member);
/// How many of the pieces that its anchors see side by side one stands in.
[[nodiscard]] int pieces_with_anchors(const catalog::Resolved& resolved, std::size_t member);

}  // namespace toehold::checks
