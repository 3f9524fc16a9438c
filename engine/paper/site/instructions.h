#pragma once
// What the site sheet tells a builder: what goes in, what to look for, what not to do. Each list holds only what this
// detail has.
#include "catalog/resolve.h"
#include "format/phrase.h"
#include "review/review.h"

#include <optional>
#include <vector>

namespace toehold::paper::site {

struct Instruction {
    format::Phrase lead;   ///< bold, in front; may be empty
    format::Phrase words;  ///< after it; a `*` at their end marks customary practice, no code value
};
using Instructions = std::vector<Instruction>;

struct Reader {
    const catalog::Resolved& resolved;
    units::System system = units::System::us;
};

// block_instructions.cpp
/// Blocks alike in size and wood together: size, wood, length, between what, and how far from what they run beside.
[[nodiscard]] Instructions block_instructions(const Reader& reader);

// end_instructions.cpp
/// What holds the ends of the blocks, ends alike together.
[[nodiscard]] Instructions block_end_instructions(const Reader& reader);
/// Rims and supports that the detail relies on, and what holds the joists to them, in one.
[[nodiscard]] Instructions surrounding_instructions(const Reader& reader);

// anchor_instructions.cpp
/// Anchors alike together, and the holes bored for them.
[[nodiscard]] Instructions anchor_instructions(const Reader& reader);

// watch_instructions.cpp
[[nodiscard]] Instructions look_for(const Reader& reader);
[[nodiscard]] Instructions do_not(const Reader& reader);

// instructions.cpp
/// Everything the sheet says of a detail: what goes in, what to look at before it is closed, what not to do.
struct AllInstructions {
    Instructions in, look, dont;
};
[[nodiscard]] AllInstructions all_instructions(const Reader& reader);

// fastening_words.cpp
struct Fastening {
    format::Phrase what;  ///< kind, count, size: `3 nails 16d common, 0.162 x 3 1/2 in.`
    format::Phrase how;   ///< where and how they stand, sentences
};
/// Of a block's end. `holder`: the kind of member it is fastened to, absent where none is described; specific gravity
/// of the block, for the lead holes of lag screws.
[[nodiscard]] Fastening fastening_words(const model::EndConnection& connection, std::optional<model::MemberKind> holder,
                                        double specific_gravity, units::System system);

}  // namespace toehold::paper::site
