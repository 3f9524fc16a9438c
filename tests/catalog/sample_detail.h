#pragma once
// A sound detail in the words of the shipped catalogs: a 5 x 7 x 3/8 steel plate with holes A to D at (+-1.75, +-2.75),
// four 3/8 x 6 lag screws, 1 in wood decking, two 3.5 x 5.5 southern pine blocks along x (B1 under A and B, B2 under C
// and D), 1.5 x 9.25 joists.
#include "model/base_detail.h"

namespace toehold::test {

[[nodiscard]] model::BaseDetail sample_detail();

}  // namespace toehold::test
