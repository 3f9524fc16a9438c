#include "cli/arguments.h"

#include "cli/command_options.h"
#include "cli/list.h"
#include "cli/option_pieces.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <array>

namespace toehold::cli {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;

constexpr std::array<std::string_view, 14> command_names = {"new",   "size",   "check",    "compare", "chart",
                                                            "proof", "remark", "report",   "draw",    "site",
                                                            "bill",  "letter", "validate", "list"};

Phrase purpose() {
    return phrase(
        "Toehold finds the uplift on every anchor of a guard post's base on a wood deck, follows it down to the\n"
        "floor framing, and says for every link whether it passes.");
}

/// A command line and what it is for.
struct Example {
    std::string_view line;
    Phrase meaning;
};

std::string examples(const Locale& locale) {
    const std::vector<Example> all = {
        {"toehold new -o porch.xml", phrase("start a detail from the job, question by question")},
        {"toehold size porch.xml -o found", phrase("the least plate, anchors and blocking that hold")},
        {"toehold check porch.xml", phrase("is this base adequate, and what governs?")},
        {"toehold check porch.xml --explain anchor-withdrawal", phrase("worked steps of one check")},
        {"toehold check --json east.xml west.xml", phrase("for another program")},
        {"toehold check details", phrase("a summary of every base detail in a folder")},
        {"toehold check --csv anchors details > anchors.csv", phrase("for a spreadsheet")},
        {"toehold compare submitted.xml own.xml", phrase("what differs, and does the verdict change?")},
        {"toehold compare porch.xml --second-basis method=LRFD", phrase("the same detail on another basis")},
        {"toehold chart porch.xml --field height=30..48/2", phrase("every check over guard height, as a table")},
        {"toehold chart porch.xml --map -o porch.svg", phrase("what holds over post spacing and guard height")},
        {"toehold proof porch.xml", phrase("what would a load test do?")},
        {"toehold remark porch.xml --about weld \"Leg?\"", phrase("a reviewer's remark, kept in the file")},
        {"toehold report porch.xml", phrase("the calculation, as PDF")},
        {"toehold draw porch.xml -o plate.dxf", phrase("the plate, for the cutting table")},
        {"toehold site porch.xml --si --paper a4", phrase("the sheet for the builder")},
        {"toehold site project.xml -o site.html", phrase("the same for phones, with fields to sign")},
        {"toehold draw project.xml --revision A -o p.dxf", phrase("a cutting file for each plate")},
        {"toehold bill project.xml", phrase("what to cut, buy and carry there")},
        {"toehold validate porch.xml plates.xml", phrase("are the files valid? plates show their SHA-256")},
        {"toehold list fasteners", phrase("what a detail may name")}};
    constexpr std::size_t line_columns = 53;
    std::string text = format::text(phrase("Examples:"), locale) + "\n";
    for (const Example& example : all) {
        std::string line = "  " + std::string(example.line);
        line.resize(std::max(line.size() + 1, line_columns + 2), ' ');
        text += line + format::text(example.meaning, locale) + "\n";
    }
    return text;
}

Phrase exit_statuses() {
    return phrase(
        "Exit status: 0 adequate (or valid); 1 inadequate or incomplete; 2 unusable input or command line;\n"
        "3 program fault, or output that could not be written. With several files: the largest.\n"
        "Of new, chart, report, draw, site, bill and letter: 0 written, whatever the verdict; 2 and 3 as above.\n"
        "Of proof: 0 foretold or written; 1 no number can be given; 2 and 3 as above.\n"
        "Of check: 4 stopped by Ctrl-C; what was reviewed till then is printed.\n"
        "Of compare: 0 the same verdict on both sides; 1 the verdict changes; 2 and 3 as above.\n"
        "Of size: 0 something holds; 1 nothing holds; 2 and 3 as above; 4 stopped before all were judged.");
}

std::string command_list() {
    std::string text;
    for (const std::string_view name : command_names) text += (text.empty() ? "" : ", ") + std::string(name);
    return text;
}

/// An unknown command deserves a better answer than "argument not expected".
const char* unknown_command(int count, const char* const* arguments) {
    if (count < 2 || arguments[1][0] == '-') return nullptr;
    const bool known = std::find(command_names.begin(), command_names.end(), arguments[1]) != command_names.end();
    return known ? nullptr : arguments[1];
}

std::string one_line(std::string text) {
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text;
}

/// What no option alone can see; absent: nothing is wrong.
std::optional<UsageError> whats_wrong(const CompareCommand& command) {
    if (command.second.empty() == command.second_basis.empty()) {
        return UsageError{phrase("compare needs either a SECOND file or --second-basis KEY=VALUE")};
    }
    for (const std::string& setting : command.second_basis) {
        if (setting.find('=') == std::string::npos) {
            return UsageError{phrase("--second-basis takes KEY=VALUE, such as method=LRFD, not \"{}\"", setting)};
        }
    }
    return std::nullopt;
}

std::optional<UsageError> whats_wrong(const ListCommand& command) {
    if (is_list_name(command.what)) return std::nullopt;
    return UsageError{phrase("there is no list \"{}\"; there are: {}", command.what, list_names_text())};
}

/// Every command, of which the command line fills in one.
struct Commands {
    NewCommand started;
    SizeCommand size;
    CheckCommand check;
    CompareCommand compare;
    RemarkCommand remark;
    PaperCommand report, draw, site, letter;
    BillCommand bill;
    ChartCommand chart;
    ProofCommand proof;
    ValidateCommand validate;
    ListCommand list;
};

template <class Chosen>
Command sound(const Chosen& command) {
    if (const auto wrong = whats_wrong(command)) return *wrong;
    return command;
}

Command chosen(const CLI::App& app, const Commands& commands) {
    if (app.got_subcommand("new")) return commands.started;
    if (app.got_subcommand("size")) return commands.size;
    if (app.got_subcommand("check")) return commands.check;
    if (app.got_subcommand("compare")) return sound(commands.compare);
    if (app.got_subcommand("chart")) return commands.chart;
    if (app.got_subcommand("proof")) return commands.proof;
    if (app.got_subcommand("remark")) return commands.remark;
    if (app.got_subcommand("report")) return commands.report;
    if (app.got_subcommand("draw")) return commands.draw;
    if (app.got_subcommand("site")) return commands.site;
    if (app.got_subcommand("bill")) return commands.bill;
    if (app.got_subcommand("letter")) return commands.letter;
    if (app.got_subcommand("validate")) return commands.validate;
    return sound(commands.list);
}

}  // namespace

Command parse_arguments(int count, const char* const* arguments, const Locale& locale) {
    if (const char* unknown = unknown_command(count, arguments)) {
        return UsageError{phrase("\"{}\" is not a command; there are: {}", unknown, command_list())};
    }
    CLI::App app(format::text(purpose(), locale), "toehold");
    app.footer(examples(locale) + "\n" + format::text(exit_statuses(), locale));
    add_language(app, locale);
    app.set_version_flag("--version", "toehold " TOEHOLD_VERSION);
    app.require_subcommand(1);
    Commands commands;
    add_new(app, commands.started, locale);
    add_size(app, commands.size, locale);
    add_check(app, commands.check, locale);
    add_compare(app, commands.compare, locale);
    add_chart(app, commands.chart, locale);
    add_proof(app, commands.proof, locale);
    add_remark(app, commands.remark, locale);
    add_report(app, commands.report, locale);
    add_draw(app, commands.draw, locale);
    add_site(app, commands.site, locale);
    add_bill(app, commands.bill, locale);
    add_letter(app, commands.letter, locale);
    add_validate(app, commands.validate, locale);
    add_list(app, commands.list, locale);
    try {
        app.parse(count, arguments);
    } catch (const CLI::CallForHelp&) {
        return ShowText{app.help()};
    } catch (const CLI::CallForVersion&) {
        return ShowText{app.version() + "\n"};
    } catch (const CLI::ParseError& error) {
        return UsageError{format::verbatim(one_line(error.what()))};
    }
    return chosen(app, commands);
}

}  // namespace toehold::cli
