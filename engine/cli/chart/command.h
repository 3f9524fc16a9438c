#pragma once
// The command that charts a study, as a value.
#include "cli/paper_command.h"

#include <string>
#include <vector>

namespace toehold::cli {

/// At most one of `tornado` and `map`. Nothing asked for: the fields are listed.
struct ChartCommand {
    std::string file;                 ///< `-`: standard input
    std::vector<std::string> fields;  ///< `height=30..48/2`: one; of a map none, or across and up
    bool tornado = false, map = false;
    PaperWishes wishes = {};  ///< `output` empty: printed as a table
    std::size_t jobs = 0;     ///< 0: as many as there are cores
    std::string data;
    std::vector<std::string> plugins;
};

}  // namespace toehold::cli
