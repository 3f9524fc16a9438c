#pragma once
// The command that starts a detail from a job, as a value.
#include <string>
#include <utility>
#include <vector>

namespace toehold::cli {

struct NewCommand {
    /// Id of a question (job/questions.h) and the answer on the command line, in the order given.
    std::vector<std::pair<std::string, std::string>> answers;
    std::string output;  ///< file to write; empty: named after the job, in the working folder; `-`: standard output
    bool force = false;  ///< a file that is there is replaced
    std::string data;
};

}  // namespace toehold::cli
