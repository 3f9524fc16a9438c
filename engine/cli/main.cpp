// The program `toehold`: one command, one status, and any fault as one sentence.
#include "cli/commands.h"
#include "cli/console.h"

#include <csignal>
#include <exception>

namespace toehold::cli {

ExitStatus run(const ShowText& shown) {
    print(shown.text);
    return ExitStatus::adequate;
}

ExitStatus run(const UsageError& error) {
    complain(error.message + "; toehold --help shows how");
    return ExitStatus::unusable_input;
}

namespace {

ExitStatus run_command_line(int count, const char* const* arguments) {
    const Command command = parse_arguments(count, arguments);
    const ExitStatus status = std::visit([](const auto& chosen) { return run(chosen); }, command);
    finish_printing();
    return status;
}

ExitStatus guarded(int count, const char* const* arguments) {
    try {
        return run_command_line(count, arguments);
    } catch (const OutputError& error) {
        complain(error.what());
    } catch (const std::exception& error) {
        complain(std::string("a fault of the program, not of the detail: ") + error.what());
    }
    return ExitStatus::internal_fault;
}

}  // namespace
}  // namespace toehold::cli

int main(int count, char** arguments) {
    // A closed pipe is then an error like any other, to be said and not died of.
    std::signal(SIGPIPE, SIG_IGN);
    return static_cast<int>(toehold::cli::guarded(count, arguments));
}
