#pragma once
// Options that several commands have. Help is in the language of `locale`.
#include "cli/paper_command.h"
#include "format/phrase.h"
#include "units/quantity.h"

#include <string>
#include <vector>

namespace CLI {
class App;
class Option;
}  // namespace CLI

namespace toehold::cli {

/// The language itself is found by `chosen_language`; here it is only taken, and refused where it is unknown.
void add_language(CLI::App& command, const format::Locale& locale);
void add_data(CLI::App& command, std::string& data, const format::Locale& locale);
/// One file after each `--plugin`, so that the files of the command are not taken for more of them.
void add_plugins(CLI::App& command, std::vector<std::string>& plugins, const format::Locale& locale);
CLI::Option* add_si(CLI::App& command, units::System& system, const format::Locale& locale);
/// `-o` with this help, `--project`, `--date` and `--paper`; returns the first.
CLI::Option* add_paper_wishes(CLI::App& command, PaperWishes& wishes, const format::Phrase& output_help,
                              const format::Locale& locale);

}  // namespace toehold::cli
