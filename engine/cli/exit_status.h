#pragma once
// What the program tells its caller. With several files: the largest.

namespace toehold::cli {

enum class ExitStatus {
    adequate = 0,        ///< every file: adequate, or valid, or listed
    not_adequate = 1,    ///< inadequate, or incomplete; of a comparison: the verdict turns
    unusable_input = 2,  ///< a file that cannot be used, or a command line that cannot be understood
    internal_fault = 3,  ///< a fault of the program, or an output that could not be written
    stopped = 4,         ///< of size: by Ctrl-C or by lines left out, before every candidate was judged; of check: by
                         ///< Ctrl-C, before every file was reviewed
};

[[nodiscard]] inline ExitStatus worse(ExitStatus a, ExitStatus b) { return a < b ? b : a; }

}  // namespace toehold::cli
