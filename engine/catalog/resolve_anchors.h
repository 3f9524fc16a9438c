#pragma once
// The part of `resolve` that puts a fastener in each place of the mount.
#include "catalog/resolve.h"

#include <vector>

namespace toehold::catalog {

/// One anchor for every place of the mount (a plate's hole, a place up a face) that has one, in the mount's order. The
/// mount's materials are resolved already. Each problem is said once for a group.
[[nodiscard]] std::vector<Anchor> resolve_anchors(const Resolved& resolved, const Catalog& catalog,
                                                  model::Problems& problems);

}  // namespace toehold::catalog
