#pragma once
// Another program, run by the shell and waited for.
#include <string>

namespace toehold::test {

/// Exit status, -1 when a signal ended it; what it prints, errors too, goes to `output` when given. Throws
/// std::runtime_error where no process can be made.
int run(const std::string& command, std::string* output = nullptr);
[[nodiscard]] bool has_program(const std::string& name);

}  // namespace toehold::test
