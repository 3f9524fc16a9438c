#pragma once
// Which parts drawings mark, and a person selects, for what a result or a finding is about.
#include "model/base_detail.h"
#include "model/part.h"

#include <vector>

namespace toehold::drawing {

/// Whole parts of the detail, as `model::parts` lists them: the anchor for its hole, the post for its shoe, the plate
/// for the base, all blocks, joists and rims for the framing, all anchors of a fastener, and for a part held at another
/// both. Empty where the detail has nothing of it.
[[nodiscard]] std::vector<model::PartId> marked_parts(const model::PartId& part, const model::BaseDetail& detail);

}  // namespace toehold::drawing
