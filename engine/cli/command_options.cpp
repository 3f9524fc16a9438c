#include "cli/command_options.h"

#include "cli/list.h"
#include "cli/option_pieces.h"

#include <CLI/CLI.hpp>

namespace toehold::cli {
namespace {

CLI::Option* add_csv(CLI::App& check, CheckCommand& command) {
    const auto choose = [&command](const std::string& table) {
        command.csv = table == "anchors" ? CsvTable::anchors : CsvTable::checks;
    };
    return check
        .add_option_function<std::string>("--csv", choose, "print a table for a spreadsheet, in in, lb and psi")
        ->type_name("anchors|checks")
        ->check(CLI::IsMember({"anchors", "checks"}).description(""));
}

void add_jobs(CLI::App& check, CheckCommand& command) {
    check.add_option("--jobs", command.jobs, "reviews at the same time; every core where it is not given")
        ->type_name("N")
        ->check(CLI::Range(1, 1024).description(""));
}

}  // namespace

void add_check(CLI::App& app, CheckCommand& command) {
    CLI::App* check = app.add_subcommand("check", "review base details: demand, every check, verdict");
    check->add_option("FILE", command.files, "base details; a folder: those in it; - reads standard input")->required();
    CLI::Option* json = check->add_flag("--json", command.json, "print the review as JSON, schema toehold.review/1");
    CLI::Option* csv = add_csv(*check, command)->excludes(json);
    check->add_option("--explain", command.explain, "show one check's worked steps, or those of `all`")
        ->type_name("CHECK")
        ->excludes(json, csv);
    check->add_flag("--all", command.all_rows, "show every result, not only the worst subject of each check")
        ->excludes(json, csv);
    add_si(*check, command.system)->excludes(json, csv);
    check->add_flag("--full", command.full, "of several files print every review, not a summary")->excludes(json, csv);
    add_jobs(*check, command);
    add_data(*check, command.data);
    add_plugins(*check, command.plugins);
}

void add_compare(CLI::App& app, CompareCommand& command) {
    CLI::App* compare = app.add_subcommand("compare", "two base details, or one on two bases: what differs");
    compare->add_option("FIRST", command.first, "base detail")->required();
    compare->add_option("SECOND", command.second, "base detail to compare it with");
    compare
        ->add_option("--second-basis", command.second_basis,
                     "compare FIRST with itself, this attribute of its basis changed; repeatable")
        ->type_name("KEY=VALUE")
        ->allow_extra_args(false);
    CLI::Option* json = compare->add_flag("--json", command.json, "print JSON, schema toehold.comparison/1");
    add_paper_wishes(*compare, command.wishes, "PDF to write instead of printing")->excludes(json);
    compare->add_flag("--all", command.all_rows, "show the checks that stay the same too");
    add_si(*compare, command.system)->excludes(json);
    add_data(*compare, command.data);
    add_plugins(*compare, command.plugins);
}

void add_remark(CLI::App& app, RemarkCommand& command) {
    CLI::App* remark = app.add_subcommand("remark", "add a reviewer's remark to a base detail, settle one, list them");
    remark->add_option("FILE", command.file, "base detail; alone: its remarks are listed")->required();
    CLI::Option* words = remark->add_option_function<std::string>(
        "WORDS",
        [&command](const std::string& given) {
            command.words = given;
            command.words_given = true;
        },
        "the remark, as one argument");
    const auto add = [&](const char* name, std::string& value, const char* help, const char* type) {
        return remark->add_option(name, value, help)->type_name(type)->needs(words);
    };
    CLI::Option* about = add("--about", command.about, "the check or finding it is about, else the detail", "CHECK");
    add("--subject", command.subject, "what was checked, as the review names it", "SUBJECT")->needs(about);
    add("--by", command.by, "who says it", "NAME");
    add("--date", command.date, "the day, such as 2026-11-25", "DAY");
    remark->add_option("--settle", command.settle, "mark the remark of this number as settled")
        ->type_name("N")
        ->check(CLI::PositiveNumber)
        ->excludes(words);
    add_data(*remark, command.data);
    add_plugins(*remark, command.plugins);
}

void add_validate(CLI::App& app, ValidateCommand& command) {
    CLI::App* validate = app.add_subcommand("validate", "say everything that is wrong with details, plates, catalogs");
    validate->add_option("FILE", command.files, "base details, plate documents, catalogs or a data folder")->required();
    add_data(*validate, command.data);
}

void add_list(CLI::App& app, ListCommand& command) {
    CLI::App* list = app.add_subcommand("list", "show what is known: checks, findings and the rows of the catalogs");
    list->add_option("WHAT", command.what, "one of: " + list_names_text())->required();
    add_data(*list, command.data);
    add_plugins(*list, command.plugins);
}

}  // namespace toehold::cli
