#pragma once
// What a candidate of a search chose, for people: the search's own labels are as short as the command line's words.
#include "editing/sizes/ranges_form.h"

#include <string>
#include <vector>

namespace toehold::editing {

/// Of one axis: `3/8 in bolt, A307`, `2 along the rail by 2 outward, 1 1/8 in from the edges`, `Under the nut: wide
/// washer`. A label that no row knows stands as it is.
[[nodiscard]] format::Phrase choice_words(const std::vector<RangeRow>& rows, const std::string& axis,
                                          const std::string& label, units::System system);

}  // namespace toehold::editing
