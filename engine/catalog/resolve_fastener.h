#pragma once
// What one anchors element says, looked up: everything about its anchors that does not depend on the hole.
#include "catalog/resolve.h"

#include <optional>
#include <string>

namespace toehold::catalog {

/// `element` is the path of the anchors element. The part of an anchor that is the same for the whole group; absent
/// when there are problems, which are added.
[[nodiscard]] std::optional<Anchor> resolve_fastener(const model::AnchorGroup& group, const Catalog& catalog,
                                                     const std::string& element, model::Problems& problems);

}  // namespace toehold::catalog
