#include "cli/arguments.h"

#include "cli/command_options.h"
#include "cli/list.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <array>

namespace toehold::cli {
namespace {

constexpr std::array<std::string_view, 9> command_names = {"check", "compare", "remark",   "report", "draw",
                                                           "site",  "letter",  "validate", "list"};

constexpr const char* purpose =
    "Toehold finds the uplift on every anchor of a guard post's base plate on a wood deck, follows it\n"
    "down to the floor framing, and says link by link whether it holds.";

constexpr const char* notes =
    "Examples:\n"
    "  toehold check porch.xml                              is this base adequate, and what governs?\n"
    "  toehold check porch.xml --explain anchor-withdrawal  the arithmetic of one check, step by step\n"
    "  toehold check --json east.xml west.xml               for another program\n"
    "  toehold check details                                a summary of every base detail in a folder\n"
    "  toehold check --csv anchors details > anchors.csv    for a spreadsheet\n"
    "  toehold compare submitted.xml own.xml                what differs, and does the verdict turn?\n"
    "  toehold compare porch.xml --second-basis method=LRFD the same detail on another basis\n"
    "  toehold remark porch.xml --about weld \"Leg?\"         a reviewer's remark, kept in the file\n"
    "  toehold report porch.xml                             the calculation, as PDF\n"
    "  toehold draw porch.xml -o plate.dxf                  the plate, for the cutting table\n"
    "  toehold site porch.xml --si --paper a4               the sheet for whoever builds it\n"
    "  toehold validate porch.xml plates.xml                are the files sound? plates show their SHA-256\n"
    "  toehold list fasteners                               what a detail may name\n"
    "\n"
    "Exit status: 0 adequate (or valid); 1 inadequate or incomplete; 2 unusable input or command line;\n"
    "3 fault of the program, or output that could not be written. With several files: the largest.\n"
    "Of report, draw, site and letter: 0 written, whatever the verdict; 2 and 3 as above.\n"
    "Of compare: 0 the verdict is the same on both sides, whatever it is; 1 it turns; 2 and 3 as above.";

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
        return UsageError{"compare needs either a SECOND file or --second-basis KEY=VALUE"};
    }
    for (const std::string& setting : command.second_basis) {
        if (setting.find('=') == std::string::npos) {
            return UsageError{"--second-basis takes KEY=VALUE, such as method=LRFD, and not \"" + setting + "\""};
        }
    }
    return std::nullopt;
}

std::optional<UsageError> whats_wrong(const ListCommand& command) {
    if (is_list_name(command.what)) return std::nullopt;
    return UsageError{"there is no list \"" + command.what + "\"; there are: " + list_names_text()};
}

/// Every command, of which the command line fills in one.
struct Commands {
    CheckCommand check;
    CompareCommand compare;
    RemarkCommand remark;
    PaperCommand report, draw, site, letter;
    ValidateCommand validate;
    ListCommand list;
};

template <class Chosen>
Command sound(const Chosen& command) {
    if (const auto wrong = whats_wrong(command)) return *wrong;
    return command;
}

Command chosen(const CLI::App& app, const Commands& commands) {
    if (app.got_subcommand("check")) return commands.check;
    if (app.got_subcommand("compare")) return sound(commands.compare);
    if (app.got_subcommand("remark")) return commands.remark;
    if (app.got_subcommand("report")) return commands.report;
    if (app.got_subcommand("draw")) return commands.draw;
    if (app.got_subcommand("site")) return commands.site;
    if (app.got_subcommand("letter")) return commands.letter;
    if (app.got_subcommand("validate")) return commands.validate;
    return sound(commands.list);
}

}  // namespace

Command parse_arguments(int count, const char* const* arguments) {
    if (const char* unknown = unknown_command(count, arguments)) {
        return UsageError{"\"" + std::string(unknown) + "\" is not a command; there are: " + command_list()};
    }
    CLI::App app(purpose, "toehold");
    app.footer(notes);
    app.set_version_flag("--version", "toehold " TOEHOLD_VERSION);
    app.require_subcommand(1);
    Commands commands;
    add_check(app, commands.check);
    add_compare(app, commands.compare);
    add_remark(app, commands.remark);
    add_report(app, commands.report);
    add_draw(app, commands.draw);
    add_site(app, commands.site);
    add_letter(app, commands.letter);
    add_validate(app, commands.validate);
    add_list(app, commands.list);
    try {
        app.parse(count, arguments);
    } catch (const CLI::CallForHelp&) {
        return ShowText{app.help()};
    } catch (const CLI::CallForVersion&) {
        return ShowText{app.version() + "\n"};
    } catch (const CLI::ParseError& error) {
        return UsageError{one_line(error.what())};
    }
    return chosen(app, commands);
}

}  // namespace toehold::cli
