#pragma once
// The command that foretells a load test, as a value.
#include "cli/paper_command.h"

#include <string>
#include <vector>

namespace toehold::cli {

struct ProofCommand {
    std::string file;                           ///< `-`: standard input
    std::string samples = "20000", seed = "1";  ///< as written; whole numbers
    std::string measured;                       ///< `50 lb=0.21 in,...`; empty: none
    bool json = false;
    bool sheet = false;       ///< writes the test's sheet instead
    bool tests = false;       ///< adds the published tests of guard posts
    PaperWishes wishes = {};  ///< `output` of the sheet
    std::string data;
    std::vector<std::string> plugins;
};

}  // namespace toehold::cli
