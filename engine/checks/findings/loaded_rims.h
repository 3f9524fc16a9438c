#pragma once
// The rims that a base loads: anchors stand in them, or a block's end meets them.
#include "catalog/resolve.h"

#include <vector>

namespace toehold::checks {

/// Pointers into `resolved`, in the file's order.
[[nodiscard]] std::vector<const model::Rim*> loaded_rims(const catalog::Resolved& resolved);

}  // namespace toehold::checks
