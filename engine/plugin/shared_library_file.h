#pragma once
// Whether a file is a whole shared library, looked at before the system maps it: loading one that was cut short ends
// the program with a bus error, which no code can catch.
#include <filesystem>
#include <string>

namespace toehold::plugin {

/// What is wrong with the file, as the end of a sentence (`is a folder`); empty when it may be loaded. Regular files
/// only, so that it never waits on a pipe. 64-bit ELF of this machine's byte order.
[[nodiscard]] std::string library_problem(const std::filesystem::path& file);

}  // namespace toehold::plugin
