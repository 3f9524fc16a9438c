#pragma once
// The part of `resolve` that puts a fastener in each hole.
#include "catalog/resolve.h"

#include <vector>

namespace toehold::catalog {

/// One anchor for every hole that has one, in the plate's order. Each problem is said once for a group.
[[nodiscard]] std::vector<Anchor> resolve_anchors(const model::BaseDetail& detail, const Catalog& catalog,
                                                  model::Problems& problems);

}  // namespace toehold::catalog
