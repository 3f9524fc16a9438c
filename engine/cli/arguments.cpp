#include "cli/arguments.h"

#include "cli/list.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <array>

namespace toehold::cli {
namespace {

constexpr std::array<std::string_view, 3> command_names = {"check", "validate", "list"};

constexpr const char* purpose =
    "Toehold finds the uplift on every anchor of a guard post's base plate on a wood deck, follows it\n"
    "down to the floor framing, and says link by link whether it holds.";

constexpr const char* notes =
    "Examples:\n"
    "  toehold check porch.xml                              is this base adequate, and what governs?\n"
    "  toehold check porch.xml --explain anchor-withdrawal  the arithmetic of one check, step by step\n"
    "  toehold check --json east.xml west.xml               for another program\n"
    "  toehold validate porch.xml plates.xml                are the files sound? plates show their SHA-256\n"
    "  toehold list fasteners                               what a detail may name\n"
    "\n"
    "Exit status: 0 adequate (or valid); 1 inadequate or incomplete; 2 unusable input or command line;\n"
    "3 fault of the program, or output that could not be written. With several files: the largest.";

constexpr const char* data_help = "folder of the catalogs (else TOEHOLD_DATA, else the one installed)";

/// One file after each `--plugin`, so that the files of the command are not taken for more of them.
void add_plugins(CLI::App& command, std::vector<std::string>& plugins) {
    command.add_option("--plugin", plugins, "shared library that adds checks; may be given several times")
        ->type_name("FILE.so")
        ->allow_extra_args(false);
}

void add_check(CLI::App& app, CheckCommand& command) {
    CLI::App* check = app.add_subcommand("check", "review base details: demand, every check, verdict");
    check->add_option("FILE", command.files, "base details; - reads standard input")->required();
    CLI::Option* json = check->add_flag("--json", command.json, "print the review as JSON, schema toehold.review/1");
    check->add_option("--explain", command.explain, "show one check's worked steps, or those of `all`")
        ->type_name("CHECK")
        ->excludes(json);
    check->add_flag("--all", command.all_rows, "show every result, not only the worst subject of each check")
        ->excludes(json);
    check
        ->add_flag_callback(
            "--si", [&command] { command.system = units::System::si; }, "show millimetres, newtons and megapascals")
        ->excludes(json);
    check->add_option("--data", command.data, data_help)->type_name("DIR");
    add_plugins(*check, command.plugins);
}

void add_validate(CLI::App& app, ValidateCommand& command) {
    CLI::App* validate = app.add_subcommand("validate", "say everything that is wrong with details, plates, catalogs");
    validate->add_option("FILE", command.files, "base details, plate documents, catalogs or a data folder")->required();
    validate->add_option("--data", command.data, data_help)->type_name("DIR");
}

void add_list(CLI::App& app, ListCommand& command) {
    CLI::App* list = app.add_subcommand("list", "show what is known: checks, findings and the rows of the catalogs");
    list->add_option("WHAT", command.what, "one of: " + list_names_text())->required();
    list->add_option("--data", command.data, data_help)->type_name("DIR");
    add_plugins(*list, command.plugins);
}

std::string comma_list(const std::array<std::string_view, 3>& names) {
    std::string text;
    for (const std::string_view name : names) text += (text.empty() ? "" : ", ") + std::string(name);
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

}  // namespace

Command parse_arguments(int count, const char* const* arguments) {
    if (const char* unknown = unknown_command(count, arguments)) {
        return UsageError{"\"" + std::string(unknown) + "\" is not a command; there are: " + comma_list(command_names)};
    }
    CLI::App app(purpose, "toehold");
    app.footer(notes);
    app.set_version_flag("--version", "toehold " TOEHOLD_VERSION);
    app.require_subcommand(1);
    CheckCommand check;
    ValidateCommand validate;
    ListCommand list;
    add_check(app, check);
    add_validate(app, validate);
    add_list(app, list);
    try {
        app.parse(count, arguments);
    } catch (const CLI::CallForHelp&) {
        return ShowText{app.help()};
    } catch (const CLI::CallForVersion&) {
        return ShowText{app.version() + "\n"};
    } catch (const CLI::ParseError& error) {
        return UsageError{one_line(error.what())};
    }
    if (app.got_subcommand("check")) return check;
    if (app.got_subcommand("validate")) return validate;
    if (!is_list_name(list.what)) {
        return UsageError{"there is no list \"" + list.what + "\"; there are: " + list_names_text()};
    }
    return list;
}

}  // namespace toehold::cli
