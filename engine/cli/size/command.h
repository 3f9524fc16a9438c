#pragma once
// The command `size`, as a value.
#include "units/quantity.h"

#include <cstddef>
#include <string>
#include <vector>

namespace toehold::cli {

/// What `size` does with its candidates.
enum class SizeWork {
    search,  ///< judges them all and shows what came of it
    list,    ///< prints their numbers
    judge,   ///< judges those whose numbers stand on standard input: a worker of a job queue
    gather,  ///< shows what came of workers' lines on standard input
};

struct SizeCommand {
    std::string file;               ///< `-`: standard input
    std::vector<std::string> vary;  ///< `KEY=VALUES`; without any, the ranges a shop would try
    SizeWork work = SizeWork::search;
    std::size_t jobs = 0;  ///< 0: as many as there are cores; a worker has one thread
    std::size_t top = 10;  ///< results shown, and written
    bool json = false;
    std::string folder;   ///< the results shown are written there, each as a complete detail; empty: nowhere
    std::string journal;  ///< file; empty: none
    bool resume = false;
    std::string prices;  ///< price table; empty: the one in the data folder
    units::System system = units::System::us;
    std::string data;
    std::vector<std::string> plugins;
};

}  // namespace toehold::cli
