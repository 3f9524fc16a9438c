#include "cli/option_pieces.h"

#include <CLI/CLI.hpp>

#include <map>

namespace toehold::cli {
namespace {

/// Empty: it is a day as ISO 8601 writes it, or `none`.
std::string whats_wrong_with_date(const std::string& text) {
    std::string wanted = "a date is written 2026-11-25, or none to leave it out, and not \"" + text + "\"";
    if (text == "none") return {};
    constexpr std::string_view form = "dddd-dd-dd";
    if (text.size() != form.size()) return wanted;
    for (std::size_t at = 0; at < form.size(); ++at) {
        const bool digit = text[at] >= '0' && text[at] <= '9';
        if (form[at] == 'd' ? !digit : text[at] != form[at]) return wanted;
    }
    const int month = std::stoi(text.substr(5, 2)), day = std::stoi(text.substr(8, 2));
    return month >= 1 && month <= 12 && day >= 1 && day <= 31 ? std::string() : wanted;
}

}  // namespace

void add_data(CLI::App& command, std::string& data) {
    command.add_option("--data", data, "folder of the catalogs (else TOEHOLD_DATA, else the one installed)")
        ->type_name("DIR");
}

void add_plugins(CLI::App& command, std::vector<std::string>& plugins) {
    command.add_option("--plugin", plugins, "shared library that adds checks; may be given several times")
        ->type_name("FILE.so")
        ->allow_extra_args(false);
}

CLI::Option* add_si(CLI::App& command, units::System& system) {
    return command.add_flag_callback(
        "--si", [&system] { system = units::System::si; }, "show millimetres, newtons and megapascals");
}

CLI::Option* add_paper_wishes(CLI::App& command, PaperWishes& wishes, const std::string& output_help) {
    CLI::Option* output = command.add_option("-o,--output", wishes.output, output_help)->type_name("FILE");
    command.add_option("--project", wishes.project, "project on the title block, else the one in the file")
        ->type_name("NAME");
    command.add_option("--date", wishes.date, "date on the paper, else today (SOURCE_DATE_EPOCH is heeded); or none")
        ->type_name("DAY")
        ->check(CLI::Validator([](std::string& text) { return whats_wrong_with_date(text); }, ""));
    const std::map<std::string, paper::PaperSize> sizes = {{"letter", paper::PaperSize::letter},
                                                           {"a4", paper::PaperSize::a4}};
    command.add_option("--paper", wishes.paper, "letter or a4; a shop drawing takes tabloid or A3")
        ->type_name("letter|a4")
        ->transform(CLI::CheckedTransformer(sizes, CLI::ignore_case).description(""));
    return output;
}

}  // namespace toehold::cli
