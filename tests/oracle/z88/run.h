#pragma once
// Running Z88F as a process in a folder of its own.
#include <array>
#include <string>
#include <vector>

namespace toehold::test {

struct Z88Input {
    std::string structure;  ///< z88i1.txt
    std::string bounds;     ///< z88i2.txt
};

/// Of each node the three motions and three rotations. Throws std::runtime_error, with the end of what the program
/// said, where it is not installed or does not finish.
[[nodiscard]] std::vector<std::array<double, 6>> run_z88(const Z88Input& input);

}  // namespace toehold::test
