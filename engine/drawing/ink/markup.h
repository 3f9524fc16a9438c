#pragma once
// Symbols of the trade (`F_c,perp'`) as markup for the text library.
#include <string>
#include <string_view>

namespace toehold::drawing::ink {

/// `_{...}` and `_` before a letter become a subscript; a bare one takes in letters, digits and commas between them.
/// Everything that means something to markup is escaped, so any text may come in.
[[nodiscard]] std::string math_markup(std::string_view words);

}  // namespace toehold::drawing::ink
