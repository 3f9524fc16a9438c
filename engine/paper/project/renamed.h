#pragma once
// Blocks that stand several times in one document, each time under names of their own.
#include "paper/report/blocks.h"

#include <string>

namespace toehold::paper::project {

/// Puts the blocks at the end, every name of a heading and every link with the prefix, headings of the second level.
void append_renamed(report::Blocks& blocks, report::Blocks added, const std::string& prefix);

}  // namespace toehold::paper::project
