#pragma once
// What would mend a detail that does not hold: few changes of it, found by the search's own means, each of them run
// through the whole review. Nothing is proposed that has not been run.
#include "catalog/catalog.h"
#include "review/review.h"

#include <vector>

namespace toehold::search {

/// Details tried under some of the pushes, and details reviewed whole, before the search for remedies ends.
inline constexpr int most_probes = 40, most_reviews = 5;

/// The fewest changes first, of as many the cheapest by the catalog's prices: single changes, then two together, then
/// three, four, at most five, until some let the detail hold. Only what bears on a failing check is changed. Where none
/// lets it hold, the two that leave least failing, and none that does not help. Empty for a detail that holds. `stop`
/// is asked before each trial, and leaves out the rest. `kept`: as of the review; nullptr: kept between trials alone.
[[nodiscard]] std::vector<review::Remedy> find_remedies(const review::Review& review, const catalog::Catalog& catalog,
                                                        const review::Stop& stop = {}, demand::Kept* kept = nullptr);

}  // namespace toehold::search
