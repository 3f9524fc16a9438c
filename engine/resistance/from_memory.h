#pragma once
// What the engine still has from memory: formulas, constants and clause numbers of its own that nobody has yet held
// against a copy of their source. Rows of the catalogs say it of themselves, by their evidence.
//
// A comment that says "from memory" has a row here, by its file (a test of the tree's structure asks for it). Whoever
// confirms a value takes the words out of the comment and the row out of this table.
#include "format/phrase.h"

#include <string_view>
#include <vector>

namespace toehold::resistance {

struct FromMemory {
    std::string_view file;                  ///< under `engine/`, whose comment says so
    format::Phrase value;                   ///< what it is, in a few words
    std::string_view source;                ///< where it is to be confirmed
    std::vector<std::string_view> used_by;  ///< ids of checks and findings; empty: whatever cites `source` rests on it
};

[[nodiscard]] const std::vector<FromMemory>& from_memory();

}  // namespace toehold::resistance
