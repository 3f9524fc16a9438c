#pragma once
// Running CalculiX as a process in a folder of its own.
#include <array>
#include <map>
#include <string>

namespace toehold::test {

/// Of each printed node, in the deck's own units: the three displacements, or rotations where a rigid body's node holds
/// them.
using Displacements = std::map<std::size_t, std::array<double, 3>>;

struct CcxRun {
    Displacements displacements;  ///< at the end of the last increment
    Displacements rotations;      ///< of nodes that have rotations beside their displacements
    int iterations = 0;
    double seconds = 0.0;  ///< of processor time, from start to end of the process
};

/// Throws std::runtime_error, with the end of what the program said, where it is not installed or does not finish.
[[nodiscard]] CcxRun run_ccx(const std::string& deck);

}  // namespace toehold::test
