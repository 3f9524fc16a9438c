#pragma once
// Telling a process that runs from one that is gone, even where its number has been given to another since.
#include <optional>
#include <string>
#include <string_view>

namespace toehold::editing {

/// A process and when it began, in ticks since the system's start.
struct ProcessMark {
    long pid = 0;
    unsigned long long began = 0;
    friend bool operator==(const ProcessMark&, const ProcessMark&) = default;
};

[[nodiscard]] ProcessMark this_process();
[[nodiscard]] bool still_runs(const ProcessMark& process);

/// `1234-567890-2.xml`: of a process and the number of one of its windows.
[[nodiscard]] std::string copy_name(const ProcessMark& process, int window);
/// The process of such a name; absent for a file that is no copy.
[[nodiscard]] std::optional<ProcessMark> process_of(std::string_view copy_name);

}  // namespace toehold::editing
