#pragma once
// How much a detail still holds where it is not built exactly as drawn.
#include "catalog/catalog.h"
#include "catalog/resolve.h"

#include <functional>
#include <vector>

namespace toehold::search {

/// What a careful crew may be off by (common practice): the holes against the post, the blocks against
/// the plate.
inline constexpr double hole_misplaced_in = 0.125;
inline constexpr double block_misplaced_in = 0.25;

/// The detail with every hole off by 1/8 in along +x, -x, +y and -y (up a face: up and down), then with every block off
/// by 1/4 in to either side across its length. Those that are no detail (a hole over the plate's edge, blocks in each
/// other) are left out.
[[nodiscard]] std::vector<model::BaseDetail> misplaced(const model::BaseDetail& detail);

/// The largest governing ratio among the misplaced details, by the whole engine; infinite where one is not adequate for
/// another reason than a ratio above 1. Up to six evaluations: asked for only of what is on the front of the other
/// scores. `stop` is asked before each; absent: it was stopped.
[[nodiscard]] std::optional<double> robustness_ratio(const catalog::Resolved& resolved, const catalog::Catalog& catalog,
                                                     const std::function<bool()>& stop = {});

}  // namespace toehold::search
