#pragma once
// Anchors that a builder reads of together, and the holes bored for them.
#include "paper/site/instructions.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::paper::site {

/// Anchors of one group in wood of one density, so that one line of boring holds for all.
struct AnchorSet {
    std::size_t group = 0;
    std::optional<double> specific_gravity;  ///< absent: nothing under them
    std::vector<const catalog::Anchor*> anchors;
};

[[nodiscard]] std::vector<AnchorSet> anchor_sets(const catalog::Resolved& resolved);
[[nodiscard]] std::vector<std::string> ids(const AnchorSet& set);

// boring_instructions.cpp
/// Bits, how deep each goes and from where. For a set in wood of known density.
[[nodiscard]] Instruction hole_instruction(const Reader& reader, const AnchorSet& set);

}  // namespace toehold::paper::site
