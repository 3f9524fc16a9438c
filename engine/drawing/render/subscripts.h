#pragma once
// Subscripts in the symbols of the trade (`F_c,perp'`), read in one place for drawings, papers and the window.
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::drawing {

/// Words of one height; views into what was given.
struct SymbolRun {
    std::string_view words;
    bool lowered = false;
};
/// `_{...}` and `_` before a letter open a subscript; a bare one takes in letters, digits and commas between them. Any
/// other `_` stands as it is.
[[nodiscard]] std::vector<SymbolRun> symbol_runs(std::string_view words);
/// Bytes of a bare subscript at the start of the text, which follows its `_`; 0: none.
[[nodiscard]] std::size_t bare_subscript_bytes(std::string_view text);

/// The same for the text library. Everything that means something to markup is escaped, so any text may come in.
[[nodiscard]] std::string math_markup(std::string_view words);

}  // namespace toehold::drawing
