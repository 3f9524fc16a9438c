#pragma once
// The options of each command, and what each of them sets.
#include "cli/arguments.h"

namespace CLI {
class App;
}

namespace toehold::cli {

void add_new(CLI::App& app, NewCommand& command, const format::Locale& locale);
void add_check(CLI::App& app, CheckCommand& command, const format::Locale& locale);
void add_compare(CLI::App& app, CompareCommand& command, const format::Locale& locale);
void add_remark(CLI::App& app, RemarkCommand& command, const format::Locale& locale);
void add_report(CLI::App& app, PaperCommand& command, const format::Locale& locale);
void add_draw(CLI::App& app, PaperCommand& command, const format::Locale& locale);
void add_site(CLI::App& app, PaperCommand& command, const format::Locale& locale);
void add_bill(CLI::App& app, BillCommand& command, const format::Locale& locale);
void add_letter(CLI::App& app, PaperCommand& command, const format::Locale& locale);
void add_chart(CLI::App& app, ChartCommand& command, const format::Locale& locale);
void add_proof(CLI::App& app, ProofCommand& command, const format::Locale& locale);
void add_size(CLI::App& app, SizeCommand& command, const format::Locale& locale);
void add_validate(CLI::App& app, ValidateCommand& command, const format::Locale& locale);
void add_list(CLI::App& app, ListCommand& command, const format::Locale& locale);

}  // namespace toehold::cli
