#pragma once
// A plain detail in the words of the shipped catalogs, of round numbers; valid and resolved without a problem.
// Two flat-lying 3.5 in wide, 5.5 in deep blocks (B1 under the heel row y = -2.5, B2 under the toe row y = +2.5),
// 5.5 x 7 in steel plate 3/8 in, four 3/8 x 6 lag screws A..D at (+-2, +-2.5), 1 in wood decking, 2 x 2 x 1/8 tube.
#include "model/base_detail.h"

namespace toehold::test {

[[nodiscard]] model::BaseDetail example_detail();

/// The loads push outward alone, under a code that lets a guard whose top is no handrail do with that.
void push_outward_alone(model::BaseDetail& detail);

}  // namespace toehold::test
