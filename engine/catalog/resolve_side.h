#pragma once
// The part of `resolve` that is about a post on a member's side: its materials and where its anchors stand.
#include "catalog/resolve.h"
#include "model/side_geometry.h"

#include <optional>
#include <vector>

namespace toehold::catalog {

struct Catalog;

using model::post_depth_in;
using model::side_joint;
using model::SideJoint;

[[nodiscard]] SideFastened resolve_side_mount(const model::SideFastened& mount, const Catalog& catalog,
                                              model::Problems& problems);

/// One anchor for every place that has one. `fasteners`: one for every group, without a place; absent: with a problem.
[[nodiscard]] std::vector<Anchor> anchors_at_places(const Resolved& resolved,
                                                    const std::vector<std::optional<Anchor>>& fasteners);

}  // namespace toehold::catalog
