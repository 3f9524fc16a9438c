#pragma once
// Marks of posts as people write them on a drawing.
#include "format/phrase.h"

#include <string>
#include <vector>

namespace toehold::wording {

/// `P1 to P12, P14`; runs by review/schedule/marks.h.
[[nodiscard]] format::Phrase marks(const std::vector<std::string>& marks);

}  // namespace toehold::wording
