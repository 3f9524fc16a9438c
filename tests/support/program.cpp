#include "support/program.h"

#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <stdexcept>

namespace toehold::test {

int run(const std::string& command, std::string* output) {
    std::FILE* const pipe = ::popen((command + " 2>&1").c_str(), "r");
    if (pipe == nullptr) throw std::runtime_error("cannot run " + command);
    std::array<char, 4096> buffer{};
    std::string text;
    for (std::size_t count = 1; count > 0;) {
        count = std::fread(buffer.data(), 1, buffer.size(), pipe);
        text.append(buffer.data(), count);
    }
    if (output != nullptr) *output = text;
    const int status = ::pclose(pipe);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

bool has_program(const std::string& name) { return run("command -v " + name) == 0; }

}  // namespace toehold::test
