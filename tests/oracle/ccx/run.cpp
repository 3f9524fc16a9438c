#include "oracle/ccx/run.h"

#include "support/file_bytes.h"
#include "support/temporary_folder.h"

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string_view>

namespace toehold::test {
namespace {

std::string file_in(const TemporaryFolder& folder, const char* name) { return (folder.path() / name).string(); }

[[noreturn]] void become_ccx(const TemporaryFolder& folder) {
    const int log = open(file_in(folder, "log").c_str(), O_WRONLY | O_CREAT, 0600);
    if (log < 0 || dup2(log, STDOUT_FILENO) < 0 || dup2(log, STDERR_FILENO) < 0) _exit(126);
    if (chdir(folder.path().c_str()) != 0) _exit(126);
    setenv("OMP_NUM_THREADS", "1", 1);
    execlp("ccx", "ccx", "-i", "job", static_cast<char*>(nullptr));
    _exit(127);
}

struct Ended {
    int status = -1;  ///< -1 when a signal ended it
    double seconds = 0.0;
};

double seconds_of(const timeval& time) {
    return static_cast<double>(time.tv_sec) + 1e-6 * static_cast<double>(time.tv_usec);
}

Ended wait_for(pid_t child) {
    int state = 0;
    rusage usage{};
    wait4(child, &state, 0, &usage);
    return {WIFEXITED(state) ? WEXITSTATUS(state) : -1, seconds_of(usage.ru_utime) + seconds_of(usage.ru_stime)};
}

double number(const std::string& word) {
    double value = 0.0;
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), value);
    if (error != std::errc() || end != word.data() + word.size()) throw std::runtime_error("ccx printed " + word);
    return value;
}

/// A block of displacements, with rotations where there are some, for each increment, a line each node; the last one
/// stays.
void read_motions(const std::string& text, CcxRun& run) {
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        std::istringstream words(line);
        std::size_t node = 0;
        std::string x, y, z, about_x, about_y, about_z;
        if (!(words >> node >> x >> y >> z)) continue;
        run.displacements[node] = {number(x), number(y), number(z)};
        if (words >> about_x >> about_y >> about_z)
            run.rotations[node] = {number(about_x), number(about_y), number(about_z)};
    }
}

int count(std::string_view text, std::string_view word) {
    int found = 0;
    for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) ++found;
    return found;
}

}  // namespace

CcxRun run_ccx(const std::string& deck) {
    const TemporaryFolder folder;
    std::ofstream(file_in(folder, "job.inp"), std::ios::binary) << deck;
    const pid_t child = fork();
    if (child < 0) throw std::runtime_error("no process");
    if (child == 0) become_ccx(folder);
    const Ended ended = wait_for(child);
    if (ended.status == 127) throw std::runtime_error("the program ccx (Debian package calculix-ccx) is not installed");
    const std::string log = bytes_of(file_in(folder, "log"));
    if (ended.status != 0 || log.find("Job finished") == std::string::npos) {
        constexpr std::size_t enough = 3000;
        throw std::runtime_error("ccx did not finish:\n" + log.substr(log.size() - std::min(enough, log.size())));
    }
    CcxRun run;
    run.seconds = ended.seconds;
    run.iterations = count(log, "average force");
    read_motions(bytes_of(file_in(folder, "job.dat")), run);
    return run;
}

}  // namespace toehold::test
