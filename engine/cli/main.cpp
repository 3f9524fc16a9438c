// The program `toehold`: one command, one status, and any fault as one sentence.
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/language.h"

#include <csignal>
#include <exception>

namespace toehold::cli {

using format::Locale;
using format::phrase;

ExitStatus run(const ShowText& shown, const Locale&) {
    print(shown.text);
    return ExitStatus::adequate;
}

ExitStatus run(const UsageError& error, const Locale& locale) {
    complain(phrase("{}; see toehold --help", error.message), locale);
    return ExitStatus::unusable_input;
}

namespace {

ExitStatus run_command_line(int count, const char* const* arguments, const Locale& locale) {
    const Command command = parse_arguments(count, arguments, locale);
    const ExitStatus status = std::visit([&locale](const auto& chosen) { return run(chosen, locale); }, command);
    finish_printing();
    return status;
}

ExitStatus guarded(int count, const char* const* arguments) {
    Locale locale;
    try {
        locale = locale_of(chosen_language(count, arguments));
        return run_command_line(count, arguments, locale);
    } catch (const OutputError& error) {
        complain(phrase("the output could not be written: {}", error.what()), locale);
    } catch (const std::exception& error) {
        complain(phrase("program fault, not a fault of the detail: {}", error.what()), locale);
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
