#include "process.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <utility>

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

Running::Running(const std::vector<std::string>& arguments, const Surroundings& surroundings) {
    const std::string folder = own_.path().string();
    std::ofstream(folder + "/in", std::ios::binary) << surroundings.input;
    process_ = fork();
    if (process_ < 0) throw std::runtime_error("no process");
    if (process_ == 0) become_toehold(arguments, surroundings, folder);
}

Running::~Running() {
    if (process_ < 0) return;
    kill(process_, SIGKILL);
    waitpid(process_, nullptr, 0);
}

bool Running::ended() const {
    siginfo_t info = {};  // its process stays to be waited for, so that no other can have its number
    return waitid(P_PID, static_cast<id_t>(process_), &info, WEXITED | WNOHANG | WNOWAIT) == 0 && info.si_pid != 0;
}

void Running::signal(int number) const { kill(process_, number); }

Ran Running::wait() {
    int state = 0;
    waitpid(std::exchange(process_, -1), &state, 0);
    const auto said = [this](const char* name) {
        return std::filesystem::exists(own_.path() / name) ? bytes_of(own_.path() / name) : std::string();
    };
    return {WIFEXITED(state) ? WEXITSTATUS(state) : -1, said("out"), said("err")};
}

Ran run_toehold(const std::vector<std::string>& arguments, const Surroundings& surroundings) {
    return Running(arguments, surroundings).wait();
}

}  // namespace toehold::test
