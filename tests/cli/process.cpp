#include "process.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>

namespace toehold::test {
namespace {

void redirect(const std::string& path, int flags, int descriptor) {
    const int file = open(path.c_str(), flags, 0600);
    if (file < 0 || dup2(file, descriptor) < 0) _exit(126);
}

void redirect_to_closed_pipe() {
    int ends[2] = {};
    if (pipe(ends) != 0 || dup2(ends[1], STDOUT_FILENO) < 0) _exit(126);
    close(ends[0]);
    close(ends[1]);
}

[[noreturn]] void become_toehold(const std::vector<std::string>& arguments, const Surroundings& surroundings,
                                 const std::string& folder) {
    redirect(folder + "/in", O_RDONLY, STDIN_FILENO);
    redirect(folder + "/err", O_WRONLY | O_CREAT, STDERR_FILENO);
    if (surroundings.close_output) {
        redirect_to_closed_pipe();
    } else {
        const std::string& file = surroundings.output_file;
        redirect(file.empty() ? folder + "/out" : file, O_WRONLY | O_CREAT, STDOUT_FILENO);
    }
    for (const std::string& variable : surroundings.environment) {
        const auto equals = variable.find('=');
        setenv(variable.substr(0, equals).c_str(), variable.substr(equals + 1).c_str(), 1);
    }
    std::vector<std::string> words = {TOEHOLD_PROGRAM};
    words.insert(words.end(), arguments.begin(), arguments.end());
    std::vector<char*> pointers;
    for (std::string& word : words) pointers.push_back(word.data());
    pointers.push_back(nullptr);
    execv(TOEHOLD_PROGRAM, pointers.data());
    _exit(127);
}

}  // namespace

Ran run_toehold(const std::vector<std::string>& arguments, const Surroundings& surroundings) {
    const TemporaryFolder own;
    const std::string folder = own.path().string();
    std::ofstream(folder + "/in", std::ios::binary) << surroundings.input;
    const pid_t child = fork();
    if (child < 0) throw std::runtime_error("no process");
    if (child == 0) become_toehold(arguments, surroundings, folder);
    int state = 0;
    waitpid(child, &state, 0);
    const auto said = [&folder](const char* name) {
        return std::filesystem::exists(folder + name) ? bytes_of(folder + name) : std::string();
    };
    return {WIFEXITED(state) ? WEXITSTATUS(state) : -1, said("/out"), said("/err")};
}

}  // namespace toehold::test
