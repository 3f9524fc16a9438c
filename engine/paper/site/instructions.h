#pragma once
// What the site sheet tells a builder, as plain words: what goes in, what to look for, what not to do. Each list holds
// only what this detail has.
#include "catalog/resolve.h"
#include "review/review.h"
#include "units/quantity.h"

#include <string>
#include <vector>

namespace toehold::paper::site {

struct Instruction {
    std::string lead;   ///< bold, in front; may be empty
    std::string words;  ///< after it; a `*` at their end marks customary practice, no code value
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
/// Rims and supports that the detail counts on, and what holds the joists to them, in one.
[[nodiscard]] Instructions surrounding_instructions(const Reader& reader);

// anchor_instructions.cpp
/// Anchors alike together, and the holes bored for them.
[[nodiscard]] Instructions anchor_instructions(const Reader& reader);

// watch_instructions.cpp
[[nodiscard]] Instructions look_for(const Reader& reader);
[[nodiscard]] Instructions do_not(const Reader& reader);

// fastening_words.cpp
struct Fastening {
    std::string what;  ///< kind, count, size: `3 nails 16d common, 0.162 x 3 1/2 in`
    std::string how;   ///< where and how they stand, sentences
};
/// `member`: `block` or `joist`; `holder`: what it is fastened to, `joist`, `rim`; specific gravity of the member, for
/// the lead holes of lag screws.
[[nodiscard]] Fastening fastening_words(const model::EndConnection& connection, const std::string& member,
                                        const std::string& holder, double specific_gravity, units::System system);

}  // namespace toehold::paper::site
