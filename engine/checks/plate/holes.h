#pragma once
// A hole in the plate against the plate's edge.
#include "model/plate.h"

namespace toehold::checks {

/// Metal between the hole's edge and the nearest edge of the plate, in; negative where the hole breaks out.
[[nodiscard]] double clear_edge_in(const model::Plate& plate, const model::Hole& hole);

}  // namespace toehold::checks
