#include "cli/option_pieces.h"

#include <CLI/CLI.hpp>

#include <map>

namespace toehold::cli {
namespace {

using format::Locale;
using format::phrase;
using format::text;

/// Empty: it is a day as ISO 8601 writes it, or `none`.
std::string whats_wrong_with_date(const std::string& given, const Locale& locale) {
    std::string wanted = text(phrase("invalid date \"{}\"; use YYYY-MM-DD, or none", given), locale);
    if (given == "none") return {};
    constexpr std::string_view form = "dddd-dd-dd";
    if (given.size() != form.size()) return wanted;
    for (std::size_t at = 0; at < form.size(); ++at) {
        const bool digit = given[at] >= '0' && given[at] <= '9';
        if (form[at] == 'd' ? !digit : given[at] != form[at]) return wanted;
    }
    const int month = std::stoi(given.substr(5, 2)), day = std::stoi(given.substr(8, 2));
    return month >= 1 && month <= 12 && day >= 1 && day <= 31 ? std::string() : wanted;
}

}  // namespace

void add_language(CLI::App& command, const Locale& locale) {
    command
        .add_option_function<std::string>(
            "--language", [](const std::string&) {},
            text(phrase("language of what is printed, en or fr (else LANGUAGE, LC_ALL, LC_MESSAGES, LANG)"), locale))
        ->type_name("en|fr")
        ->check(CLI::IsMember({"en", "fr"}).description(""));
}

void add_data(CLI::App& command, std::string& data, const Locale& locale) {
    command
        .add_option("--data", data,
                    text(phrase("folder of the catalogs (else TOEHOLD_DATA, else the one installed)"), locale))
        ->type_name("DIR");
}

void add_plugins(CLI::App& command, std::vector<std::string>& plugins, const Locale& locale) {
    command.add_option("--plugin", plugins, text(phrase("shared library that adds checks; repeatable"), locale))
        ->type_name("FILE.so")
        ->allow_extra_args(false);
}

CLI::Option* add_si(CLI::App& command, units::System& system, const Locale& locale) {
    return command.add_flag_callback(
        "--si", [&system] { system = units::System::si; },
        text(phrase("show millimeters, newtons and megapascals"), locale));
}

CLI::Option* add_paper_wishes(CLI::App& command, PaperWishes& wishes, const format::Phrase& output_help,
                              const Locale& locale) {
    CLI::Option* output =
        command.add_option("-o,--output", wishes.output, text(output_help, locale))->type_name("FILE");
    command
        .add_option("--project", wishes.project,
                    text(phrase("project on the title block, else the one in the file"), locale))
        ->type_name("NAME");
    command
        .add_option("--date", wishes.date,
                    text(phrase("date on the paper, else today (or SOURCE_DATE_EPOCH); or none"), locale))
        ->type_name("DAY")
        ->check(CLI::Validator([locale](std::string& day) { return whats_wrong_with_date(day, locale); }, ""));
    const std::map<std::string, paper::PaperSize> sizes = {{"letter", paper::PaperSize::letter},
                                                           {"a4", paper::PaperSize::a4}};
    command
        .add_option("--paper", wishes.paper, text(phrase("letter or a4; a shop drawing takes tabloid or A3"), locale))
        ->type_name("letter|a4")
        ->transform(CLI::CheckedTransformer(sizes, CLI::ignore_case).description(""));
    return output;
}

}  // namespace toehold::cli
