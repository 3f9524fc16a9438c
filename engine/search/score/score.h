#pragma once
// What a detail costs its builder, as the few numbers a search ranks by. Pure sums over what the detail describes.
#include "catalog/prices.h"
#include "catalog/resolve.h"
#include "search/space/space.h"

#include <optional>

namespace toehold::search {

/// Less is better in each.
struct Score {
    /// Of metal: plate or bracket without its holes, anchors' shanks, washers, backing plates, plates under heads and
    /// lower plates. Not counted: heads and nuts, and ties and hardware at the ends of members, whose size no file
    /// gives.
    double weight_lb = 0.0;
    /// Plate by weight, holes and cut outline, anchors, washers, backing plates, blocks, what is at their ends, and
    /// joist pieces beside a first one, by the price table, in its currency. Of a post on a member's side also a wood
    /// post, the pieces beside the first of its member, ties, and hardware between its rim and the joists.
    double steel_cost = 0.0;
    int unpriced = 0;  ///< pieces the table has no price for: with any, `steel_cost` is what the others cost
    /// To cut, buy and place: plate, anchors, washers, backing plates, pieces of blocks and of joists beside a first
    /// one, and angles or hardware at block ends (nails and screws there are not counted); on a side what the cost
    /// counts there.
    int pieces = 0;
    int anchors = 0;
    double governing_ratio = 0.0;  ///< demand over capacity of the check that governs
    /// The same with holes and blocks misplaced, the worst of `misplaced`; absent: not asked for. See robustness.h.
    std::optional<double> robustness_ratio = std::nullopt;
    friend bool operator==(const Score&, const Score&) = default;
};

[[nodiscard]] Score score(const catalog::Resolved& resolved, const catalog::Prices& prices, double governing_ratio);

/// A candidate that holds.
struct Result {
    Candidate candidate = 0;
    model::BaseDetail detail;
    Score score;
};

}  // namespace toehold::search
