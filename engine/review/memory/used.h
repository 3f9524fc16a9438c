#pragma once
// Values from memory that this detail's review rests on: of the engine's own, those that a check or a finding of it
// uses; of the catalogs, the rows it names.
#include "format/phrase.h"

#include <vector>

namespace toehold::review {

struct Review;

/// One phrase each, none twice: `group action factor (NDS 2018 11.3.6)`, `catalog values of 316L filler`.
[[nodiscard]] std::vector<format::Phrase> from_memory(const Review& review);
/// The same as one caution; empty where the review rests on none.
[[nodiscard]] format::Phrase memory_caution(const Review& review);

}  // namespace toehold::review
