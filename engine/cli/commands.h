#pragma once
// The commands. Each prints on standard output, complains on standard error, and returns its status. `locale` gives the
// language; the units are the command's own.
#include "cli/arguments.h"
#include "cli/exit_status.h"

namespace toehold::cli {

[[nodiscard]] ExitStatus run(const NewCommand& command, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const CheckCommand& command, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const CompareCommand& command, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const RemarkCommand& command, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const PaperCommand& command, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const BillCommand& command, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const ChartCommand& command, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const ProofCommand& command, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const SizeCommand& command, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const ValidateCommand& command, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const ListCommand& command, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const ShowText& shown, const format::Locale& locale);
[[nodiscard]] ExitStatus run(const UsageError& error, const format::Locale& locale);

}  // namespace toehold::cli
