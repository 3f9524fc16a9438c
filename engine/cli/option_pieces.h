#pragma once
// Options that several commands have.
#include "cli/paper_command.h"
#include "units/quantity.h"

#include <string>
#include <vector>

namespace CLI {
class App;
class Option;
}  // namespace CLI

namespace toehold::cli {

void add_data(CLI::App& command, std::string& data);
/// One file after each `--plugin`, so that the files of the command are not taken for more of them.
void add_plugins(CLI::App& command, std::vector<std::string>& plugins);
CLI::Option* add_si(CLI::App& command, units::System& system);
/// `-o` with this help, `--project`, `--date` and `--paper`; returns the first.
CLI::Option* add_paper_wishes(CLI::App& command, PaperWishes& wishes, const std::string& output_help);

}  // namespace toehold::cli
