#pragma once
// The hand estimate: rows of anchors, plate and screws for the moment at the plate.
#include "job/design.h"

namespace toehold::job {

/// Fills in `tension_lb`, `row_x_in`, `row_y_in`, `screw_length_in` and `thickness_in`; all else but those is there.
void size_base(const Job& job, Design& design, const catalog::Catalog& catalog);

}  // namespace toehold::job
