#pragma once
// Standard input, output and error, with nothing lost in silence.
#include "cli/exit_status.h"
#include "format/phrase.h"
#include "model/problem.h"

#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

namespace toehold::cli {

/// Standard output refused what was written: a full disk, a closed pipe. `what()` is the system's own reason.
struct OutputError : std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// Throws OutputError.
void print(std::string_view text);
/// Sends on what is still held back. Throws OutputError.
void finish_printing();

/// One line on standard error, `toehold: ` before it; control characters made harmless.
void complain(const format::Phrase& sentence, const format::Locale& locale);
/// Each problem on its own line; the status for an input with these problems.
ExitStatus complain(const model::Problems& problems, const format::Locale& locale);

/// Everything from standard input, or enough of it to be refused as too large; absent when reading fails.
[[nodiscard]] std::optional<std::string> read_standard_input();

}  // namespace toehold::cli
