#pragma once
// A hole in the plate: the one an anchor stands in, and its distance from the plate's edge.
#include "model/plate.h"

#include <string>

namespace toehold::checks {

/// The plate's hole with this id, which is its anchor's too. Throws std::logic_error where it has none.
[[nodiscard]] const model::Hole& hole_of(const model::Plate& plate, const std::string& id);

/// Metal between the hole's edge and the nearest edge of the plate, in; negative where the hole breaks out.
[[nodiscard]] double clear_edge_in(const model::Plate& plate, const model::Hole& hole);

}  // namespace toehold::checks
