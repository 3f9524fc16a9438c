#include "cli/command_options.h"

#include "cli/list.h"
#include "cli/option_pieces.h"

#include <CLI/CLI.hpp>

#include <map>

namespace toehold::cli {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;
using format::text;

CLI::Option* add_csv(CLI::App& check, CheckCommand& command, const Locale& locale) {
    const std::map<std::string, CsvTable> tables = {{"anchors", CsvTable::anchors},
                                                    {"checks", CsvTable::checks},
                                                    {"posts", CsvTable::posts},
                                                    {"files", CsvTable::files}};
    return check
        .add_option_function<std::string>(
            "--csv", [&command, tables](const std::string& table) { command.csv = tables.at(table); },
            text(phrase("print a table for a spreadsheet, in in, lb and psi: a row an anchor, a result, a post, or a "
                        "file, sorted by first cause"),
                 locale))
        ->type_name("anchors|checks|posts|files")
        ->check(CLI::IsMember({"anchors", "checks", "posts", "files"}).description(""));
}

void add_jobs(CLI::App& check, CheckCommand& command, const Locale& locale) {
    check.add_option("--jobs", command.jobs, text(phrase("reviews at the same time; default: every core"), locale))
        ->type_name("N")
        ->check(CLI::Range(1, 1024).description(""));
}

}  // namespace

void add_check(CLI::App& app, CheckCommand& command, const Locale& locale) {
    const auto said = [&locale](const Phrase& words) { return text(words, locale); };
    CLI::App* check = app.add_subcommand("check", said(phrase("review base details: demand, every check, verdict")));
    check
        ->add_option("FILE", command.files, said(phrase("base details; a folder: those in it; - reads standard input")))
        ->required();
    CLI::Option* json =
        check->add_flag("--json", command.json, said(phrase("print the review as JSON, schema toehold.review/1")));
    CLI::Option* csv = add_csv(*check, command, locale)->excludes(json);
    check->add_option("--explain", command.explain, said(phrase("show one check's worked steps, or those of `all`")))
        ->type_name("CHECK")
        ->excludes(json, csv);
    check->add_flag("--all", command.all_rows, said(phrase("show every result, not only the worst part of each check")))
        ->excludes(json, csv);
    add_si(*check, command.system, locale)->excludes(json, csv);
    check->add_flag("--full", command.full, said(phrase("for several files, print every review, not a summary")))
        ->excludes(json, csv);
    add_jobs(*check, command, locale);
    add_language(*check, locale);
    add_data(*check, command.data, locale);
    add_plugins(*check, command.plugins, locale);
}

void add_compare(CLI::App& app, CompareCommand& command, const Locale& locale) {
    const auto said = [&locale](const Phrase& words) { return text(words, locale); };
    CLI::App* compare = app.add_subcommand("compare", said(phrase("compare two base details, or one on two bases")));
    compare->add_option("FIRST", command.first, said(phrase("base detail")))->required();
    compare->add_option("SECOND", command.second, said(phrase("base detail to compare it with")));
    compare
        ->add_option("--second-basis", command.second_basis,
                     said(phrase("compare FIRST with itself, this attribute of its basis changed; repeatable")))
        ->type_name("KEY=VALUE")
        ->allow_extra_args(false);
    CLI::Option* json =
        compare->add_flag("--json", command.json, said(phrase("print JSON, schema toehold.comparison/1")));
    add_paper_wishes(*compare, command.wishes, phrase("PDF to write instead of printing"), locale)->excludes(json);
    compare->add_flag("--all", command.all_rows, said(phrase("show the checks without change too")));
    add_si(*compare, command.system, locale)->excludes(json);
    add_language(*compare, locale);
    add_data(*compare, command.data, locale);
    add_plugins(*compare, command.plugins, locale);
}

void add_remark(CLI::App& app, RemarkCommand& command, const Locale& locale) {
    const auto said = [&locale](const Phrase& words) { return text(words, locale); };
    CLI::App* remark = app.add_subcommand(
        "remark", said(phrase("add a reviewer's remark to a base detail, settle one, or list them")));
    remark->add_option("FILE", command.file, said(phrase("base detail; alone: its remarks are listed")))->required();
    CLI::Option* words = remark->add_option_function<std::string>(
        "WORDS",
        [&command](const std::string& given) {
            command.words = given;
            command.words_given = true;
        },
        said(phrase("the remark, as one argument")));
    const auto add = [&](const char* name, std::string& value, const Phrase& help, const char* type) {
        return remark->add_option(name, value, said(help))->type_name(type)->needs(words);
    };
    CLI::Option* about =
        add("--about", command.about, phrase("the check or finding it is about, else the detail"), "CHECK");
    add("--subject", command.subject, phrase("the part it is about, as the review names it"), "PART")->needs(about);
    add("--by", command.by, phrase("who says it"), "NAME");
    add("--date", command.date, phrase("the date, such as 2026-11-25"), "DAY");
    remark->add_option("--settle", command.settle, said(phrase("mark the remark of this number as settled")))
        ->type_name("N")
        ->check(CLI::PositiveNumber)
        ->excludes(words);
    add_language(*remark, locale);
    add_data(*remark, command.data, locale);
    add_plugins(*remark, command.plugins, locale);
}

void add_validate(CLI::App& app, ValidateCommand& command, const Locale& locale) {
    CLI::App* validate = app.add_subcommand(
        "validate", text(phrase("list everything that is wrong with details, plates, catalogs"), locale));
    validate
        ->add_option("FILE", command.files,
                     text(phrase("base details, plate documents, catalogs or a data folder"), locale))
        ->required();
    add_language(*validate, locale);
    add_data(*validate, command.data, locale);
}

void add_list(CLI::App& app, ListCommand& command, const Locale& locale) {
    CLI::App* list = app.add_subcommand(
        "list", text(phrase("show what is known: checks, findings, the rows of the catalogs, and what is from memory"),
                     locale));
    list->add_option("WHAT", command.what, text(phrase("one of: {}", list_names_text()), locale))->required();
    list->add_flag("--json", command.json,
                   text(phrase("print an array of objects with name, value and source"), locale));
    add_language(*list, locale);
    add_data(*list, command.data, locale);
    add_plugins(*list, command.plugins, locale);
}

}  // namespace toehold::cli
