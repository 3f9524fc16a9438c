#pragma once
// What the engine still has from memory: formulas, constants and clause numbers of its own that nobody has yet held
// against a copy of their source. Rows of the catalogs say it of themselves, by their evidence.
//
// A comment that says "from memory" has a row here, by its file (a test of the tree's structure asks for it). Whoever
// confirms a value takes the words out of the comment and the row out of this table.
#include "format/phrase.h"

#include <string_view>
#include <vector>

namespace toehold::review {

/// Where else than in its checks a value must be met for it to matter.
enum class Concerns {
    anything,
    aluminum,         ///< the post, or what is welded to the mount, of aluminum
    stainless,        ///< the same, of stainless steel
    engineered_wood,  ///< a member of entered values
    lrfd,
};

struct FromMemory {
    std::string_view file;                  ///< under `engine/`, whose comment says so
    format::Phrase value;                   ///< what it is, in a few words
    std::string_view source;                ///< where it is to be confirmed
    std::vector<std::string_view> used_by;  ///< ids of checks and findings; empty: whatever cites `source` rests on it
    Concerns concerns = Concerns::anything;
};

[[nodiscard]] const std::vector<FromMemory>& from_memory();

}  // namespace toehold::review
