#pragma once
// The commands. Each prints on standard output, complains on standard error, and returns its status.
#include "cli/arguments.h"
#include "cli/exit_status.h"

namespace toehold::cli {

[[nodiscard]] ExitStatus run(const CheckCommand& command);
[[nodiscard]] ExitStatus run(const CompareCommand& command);
[[nodiscard]] ExitStatus run(const RemarkCommand& command);
[[nodiscard]] ExitStatus run(const PaperCommand& command);
[[nodiscard]] ExitStatus run(const ValidateCommand& command);
[[nodiscard]] ExitStatus run(const ListCommand& command);
[[nodiscard]] ExitStatus run(const ShowText& shown);
[[nodiscard]] ExitStatus run(const UsageError& error);

}  // namespace toehold::cli
