#pragma once
// A post on the outside face of a doubled rim, in the words of the shipped catalogs; valid and resolved without a
// problem. 4x4 southern pine (3.5 x 3.5), 1/2 in through-bolts U and L 2 and 7 in below the rim's top, on the post's
// axis, plate washers under head and nut; the post ends 9 in below the top. Rim R1 2-ply 2x10, 5 joists J1..J5 16 in
// apart (J3 beside the post at x = 8), 1 in boards, ledger and beam.
#include "model/base_detail.h"

namespace toehold::test {

[[nodiscard]] model::BaseDetail side_detail();

/// The same post on the rim's inside face: y of everything turned about.
[[nodiscard]] model::BaseDetail inside_detail();

/// A steel tube on a bracket plate 5 x 8 x 3/8 in, four bolts at (+-1.75, 2) and (+-1.75, 7).
[[nodiscard]] model::BaseDetail bracket_detail();

/// Ties TU and TL from the post's bolts to joist J3, of 1,800 lb at 0.125 in.
void add_ties(model::BaseDetail& detail);

}  // namespace toehold::test
