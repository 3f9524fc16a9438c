#pragma once
// The weld at a post's foot in words.
#include "format/phrase.h"
#include "model/post.h"

namespace toehold::paper {

/// `3/16 fillet all around, above and below the plate`. `leg` and `throat`: those lengths as the reader's paper writes
/// them.
[[nodiscard]] format::Phrase words_of_weld(const model::Weld& weld, const format::Phrase& leg,
                                           const format::Phrase& throat);
/// `4 gussets, 2 high x 1 1/2 long x 1/4`; empty without any.
[[nodiscard]] format::Phrase words_of_gussets(const model::Weld& weld);

/// `on the outward and inward sides`; empty for all four.
[[nodiscard]] format::Phrase welded_sides(const model::FootSides& sides);

}  // namespace toehold::paper
