#include "editing/document/process.h"

#include <fmt/format.h>
#include <signal.h>
#include <unistd.h>

#include <cerrno>
#include <charconv>
#include <fstream>
#include <iterator>
#include <vector>

namespace toehold::editing {
namespace {

struct Status {
    char state = 'R';
    unsigned long long began = 0;
};

template <class Number>
bool take_number(std::string_view& text, Number& number) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{}) return false;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return true;
}

bool take(std::string_view& text, std::string_view expected) {
    if (!text.starts_with(expected)) return false;
    text.remove_prefix(expected.size());
    return true;
}

/// The fields of /proc/PID/stat after the command, which may itself hold blanks and brackets (proc(5)): the first is
/// the state, the twentieth the time the process began.
std::optional<Status> status_of(long pid) {
    std::ifstream file(fmt::format("/proc/{}/stat", pid));
    const std::string line{std::istreambuf_iterator<char>(file), {}};
    const std::size_t command_end = line.rfind(") ");
    if (command_end == std::string::npos) return std::nullopt;
    std::string_view rest = std::string_view(line).substr(command_end + 2);
    if (rest.empty()) return std::nullopt;
    Status status{rest.front(), 0};
    constexpr int fields_before_began = 19;
    for (int field = 0; field < fields_before_began; ++field) {
        const std::size_t blank = rest.find(' ');
        if (blank == std::string_view::npos) return std::nullopt;
        rest.remove_prefix(blank + 1);
    }
    if (!take_number(rest, status.began)) return std::nullopt;
    return status;
}

}  // namespace

ProcessMark this_process() {
    const long pid = ::getpid();
    const std::optional<Status> status = status_of(pid);
    return {pid, status ? status->began : 0};
}

bool still_runs(const ProcessMark& process) {
    if (const std::optional<Status> status = status_of(process.pid)) {
        const bool ended = status->state == 'Z' || status->state == 'X';
        return !ended && status->began == process.began;
    }
    // Gone, or a system without /proc: there the number alone must do.
    if (status_of(::getpid())) return false;
    return ::kill(static_cast<pid_t>(process.pid), 0) == 0 || errno == EPERM;
}

std::string copy_name(const ProcessMark& process, int window) {
    return fmt::format("{}-{}-{}.xml", process.pid, process.began, window);
}

std::optional<ProcessMark> process_of(std::string_view copy_name) {
    ProcessMark process;
    int window = 0;
    const bool read = take_number(copy_name, process.pid) && take(copy_name, "-") &&
                      take_number(copy_name, process.began) && take(copy_name, "-") && take_number(copy_name, window);
    if (!read || copy_name != ".xml" || process.pid <= 0) return std::nullopt;
    return process;
}

}  // namespace toehold::editing
