#pragma once
// A line of guard as text: what each post sees of a push, the rail's checks, movement, and what sharing rests on.
#include "format/phrase.h"

#include <string>

namespace toehold::review {
struct LineReview;
}

namespace toehold::exporting {

/// Begins and ends with a newline.
[[nodiscard]] std::string line_text(const review::LineReview& line, const format::Locale& locale);

}  // namespace toehold::exporting
