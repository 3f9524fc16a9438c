#pragma once
// Whether a file is a whole shared library, looked at before the system maps it: loading one that was cut short ends
// the program with a bus error, which no code can catch.
#include "format/phrase.h"

#include <filesystem>

namespace toehold::plugin {

/// What is wrong with the file, in a few words (`is a folder`); empty when it may be loaded. Regular files
/// only, so that it never waits on a pipe. 64-bit ELF of this machine's byte order.
[[nodiscard]] format::Phrase library_problem(const std::filesystem::path& file);

}  // namespace toehold::plugin
