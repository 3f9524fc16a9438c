#pragma once
// The anchors that share one block: the rows they stand in, and what the standard takes off their lateral values for
// standing close to an end or to each other.
#include "catalog/resolve.h"
#include "demand/demand.h"

#include <cstddef>
#include <vector>

namespace toehold::checks {

/// Every anchor that lands in the same block as `index`, itself included, in the plate's order. The anchor must land.
[[nodiscard]] std::vector<std::size_t> block_mates(const catalog::Resolved& resolved, std::size_t index);

/// One anchor in the block, or all of them on one line along its grain (within the largest diameter).
[[nodiscard]] bool single_row_along_grain(const catalog::Resolved& resolved, std::size_t index);

/// Cg, NDS 2018 11.3.6, for the anchor's row along the grain and its row across it, the lesser. Uneven spacing counts
/// as the widest. The steel plate is the side member.
[[nodiscard]] double row_factor(const catalog::Resolved& resolved, std::size_t index);

/// CDelta, NDS 2018 12.5.1: the least of the block's anchors in this state, for their end distances in the sense each
/// one's force acts, and for the spacing of any two. 0 where a distance is below the least permitted.
[[nodiscard]] double geometry_factor(const catalog::Resolved& resolved, const demand::State& state, std::size_t index);

}  // namespace toehold::checks
