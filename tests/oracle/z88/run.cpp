#include "oracle/z88/run.h"

#include "support/file_bytes.h"
#include "support/temporary_folder.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <sstream>
#include <stdexcept>

namespace toehold::test {
namespace {

/// The sizes of its arrays, which the program reads from the folder it works in.
constexpr const char* sizes = R"(DYNAMIC START
ENGLISH
  NET START
    MAXSE 4000
    MAXESS 800
    MAXKSS 4000
    MAXAN 15
  NET END
COMMON START
    MAXGS 500000
    MAXKOI 10000
    MAXK 2000
    MAXE 2000
    MAXNFG 12000
    MAXNEG 2000
    MAXPR 1000
    MAXRBD 5000
    MAXIEZ 500000
    MAXGP 50000
COMMON END
  CUTKEE START
    MAXGRA 200
    MAXNDL 1000
  CUTKEE END
DYNAMIC END
)";

[[noreturn]] void become_z88(const TemporaryFolder& folder) {
    const int log = open((folder.path() / "log").c_str(), O_WRONLY | O_CREAT, 0600);
    if (log < 0 || dup2(log, STDOUT_FILENO) < 0 || dup2(log, STDERR_FILENO) < 0) _exit(126);
    if (chdir(folder.path().c_str()) != 0) _exit(126);
    execlp("z88f", "z88f", "-c", static_cast<char*>(nullptr));
    _exit(127);
}

/// After the headings, a line each node: its number and six motions.
std::vector<std::array<double, 6>> motions_in(const std::string& text) {
    std::vector<std::array<double, 6>> result;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        std::istringstream words(line);
        std::size_t node = 0;
        std::array<double, 6> of = {};
        if (!(words >> node)) continue;
        for (double& value : of) words >> value;
        if (!words || node != result.size() + 1) throw std::runtime_error("z88f printed " + line);
        result.push_back(of);
    }
    return result;
}

}  // namespace

std::vector<std::array<double, 6>> run_z88(const Z88Input& input) {
    const TemporaryFolder folder;
    put_bytes(folder.path() / "z88.dyn", sizes);
    put_bytes(folder.path() / "z88i1.txt", input.structure);
    put_bytes(folder.path() / "z88i2.txt", input.bounds);
    put_bytes(folder.path() / "z88i3.txt", "0\n");
    const pid_t child = fork();
    if (child < 0) throw std::runtime_error("no process");
    if (child == 0) become_z88(folder);
    int state = 0;
    waitpid(child, &state, 0);
    const int status = WIFEXITED(state) ? WEXITSTATUS(state) : -1;
    if (status == 127) throw std::runtime_error("the program z88f (Debian package z88) is not installed");
    const std::string log = bytes_of(folder.path() / "log");
    if (log.find("Z88F done") == std::string::npos) {
        constexpr std::size_t enough = 2000;
        throw std::runtime_error("z88f did not finish:\n" + log.substr(log.size() - std::min(enough, log.size())));
    }
    return motions_in(bytes_of(folder.path() / "z88o2.txt"));
}

}  // namespace toehold::test
