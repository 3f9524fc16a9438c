#pragma once
// The yield modes of a dowel whose members do not touch: the general dowel equations of AWC Technical Report 12 for
// solid members (equations from memory, to be confirmed; without a gap they are the NDS equations to the last digit,
// tests). A gap lengthens the dowel's lever and costs much: decking under a plate is such a gap unless it counts as
// wood around the shank.
//
// Each mode solves A P^2 + B P + C = 0 for P >= 0, with bearing resistances q = Fe D (lb/in) in each member and the
// dowel's plastic moment M = Fyb D^3 / 6 (lb in).
#include "resistance/wood/yield_limit.h"

#include <vector>

namespace toehold::resistance {

/// One shear plane, `gap_in` >= 0: Im, Is, II, IIIm, IIIs, IV. Throws std::invalid_argument as `single_shear`.
[[nodiscard]] std::vector<ModeValue> single_shear_with_gap(const DowelConnection& connection,
                                                           const ReductionTerms& reduction);

}  // namespace toehold::resistance
