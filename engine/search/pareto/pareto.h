#pragma once
// Which results no other beats.
#include "search/score/score.h"

#include <cstddef>
#include <vector>

namespace toehold::search {

/// Whether one is at least as good in weight, cost, pieces, anchors and governing ratio, and better in one of them.
/// Numbers count as they are shown, weight and cost to 0.01 and the ratio to 0.01: what nobody sees is no reason.
[[nodiscard]] bool beats(const Score& one, const Score& other);

/// Places in `results` of those that none beats; of several with the same numbers the one of the lowest candidate.
/// Cheapest first, then lightest, fewest pieces, fewest anchors, least ratio, lowest candidate.
[[nodiscard]] std::vector<std::size_t> front_of(const std::vector<Result>& results);

}  // namespace toehold::search
