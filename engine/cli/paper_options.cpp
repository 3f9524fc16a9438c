// Options of the commands that write a paper.
#include "cli/command_options.h"
#include "cli/option_pieces.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <map>

namespace toehold::cli {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;
using format::text;

CLI::App* add_paper(CLI::App& app, PaperCommand& command, const char* name, const Phrase& help,
                    const Phrase& output_help, const Locale& locale,
                    const Phrase& file_help = phrase("base detail; - reads standard input")) {
    CLI::App* made = app.add_subcommand(name, text(help, locale));
    made->add_option("FILE", command.file, text(file_help, locale))->required();
    add_paper_wishes(*made, command.wishes, output_help, locale);
    add_si(*made, command.wishes.system, locale);
    add_language(*made, locale);
    add_data(*made, command.data, locale);
    return made;
}

/// A revision stands in file names: letters, digits, `.`, `-` and `_`.
void add_revision(CLI::App& made, PaperCommand& command, const Locale& locale) {
    const auto whats_wrong = [locale](const std::string& given) {
        constexpr std::size_t longest = 12;
        constexpr const char* plain = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.-_";
        const bool fits =
            !given.empty() && given.size() <= longest && given.find_first_not_of(plain) == std::string::npos;
        return fits
                   ? std::string()
                   : text(phrase("invalid revision \"{}\"; use at most {} letters, digits, ., - and _", given, longest),
                          locale);
    };
    made.add_option("--revision", command.wishes.revision,
                    text(phrase("revision on the paper, and in the name of a file that is not named"), locale))
        ->type_name("REV")
        ->check(CLI::Validator([whats_wrong](std::string& given) { return whats_wrong(given); }, ""));
}

/// What a phone's camera opens, and a page may link to: the web's two kinds of address, short enough for a code that
/// is read from paper.
void add_link(CLI::App& made, PaperCommand& command, const Locale& locale) {
    const auto whats_wrong = [locale](const std::string& given) {
        constexpr std::size_t longest = 300;
        const bool web = given.rfind("https://", 0) == 0 || given.rfind("http://", 0) == 0;
        const bool plain = std::all_of(given.begin(), given.end(), [](char one) { return one > ' ' && one <= '~'; });
        return web && plain && given.size() <= longest
                   ? std::string()
                   : text(
                         phrase("invalid link \"{}\"; use an address with https:// or http://, without blanks, at most "
                                "{} characters",
                                given, longest),
                         locale);
    };
    made.add_option(
            "--link", command.wishes.link,
            text(phrase("address where the page can be fetched, in its QR code; else the input's SHA-256"), locale))
        ->type_name("URL")
        ->check(CLI::Validator([whats_wrong](std::string& given) { return whats_wrong(given); }, ""));
}

}  // namespace

void add_report(CLI::App& app, PaperCommand& command, const Locale& locale) {
    command.kind = paper::Kind::report;
    CLI::App* report = add_paper(app, command, "report", phrase("write the calculation of a base detail as PDF"),
                                 phrase("PDF to write, else FILE-report.pdf here"), locale,
                                 phrase("base detail or project; - reads a base detail from standard input"));
    add_plugins(*report, command.plugins, locale);
}

void add_draw(CLI::App& app, PaperCommand& command, const Locale& locale) {
    command.kind = paper::Kind::shop_drawing;
    CLI::App* draw = add_paper(app, command, "draw", phrase("draw the plate for the shop, or one view of the detail"),
                               phrase("file to write, .pdf, .svg, .png or .dxf, else FILE-plate.pdf here; of a project "
                                      "each plate's name is put before the ending"),
                               locale,
                               phrase("base detail or project, of which every kind of plate is drawn; - reads a base "
                                      "detail from standard input"));
    add_revision(*draw, command, locale);
    const std::map<std::string, paper::Kind> views = {{"shop", paper::Kind::shop_drawing},
                                                      {"plan", paper::Kind::plan},
                                                      {"section", paper::Kind::section},
                                                      {"elevation", paper::Kind::elevation}};
    draw->add_option("--view", command.kind,
                     text(phrase("the shop drawing (.dxf: the plate to be cut), or one view of the detail"), locale))
        ->type_name("shop|plan|section|elevation")
        ->transform(CLI::CheckedTransformer(views, CLI::ignore_case).description(""));
}

void add_site(CLI::App& app, PaperCommand& command, const Locale& locale) {
    command.kind = paper::Kind::site_sheet;
    CLI::App* site =
        add_paper(app, command, "site", phrase("write one page for whoever builds under the deck boards"),
                  phrase("file to write, .pdf, .svg, .png, or .html for phones, else FILE-site.pdf here"), locale,
                  phrase("base detail, or project (.html, .pdf); - reads a base detail from standard input"));
    add_revision(*site, command, locale);
    add_link(*site, command, locale);
    add_plugins(*site, command.plugins, locale);
}

void add_bill(CLI::App& app, BillCommand& command, const Locale& locale) {
    CLI::App* bill = app.add_subcommand(
        "bill", text(phrase("print the bill of materials: posts, plates, anchors, blocks, connectors"), locale));
    bill->add_option("FILE", command.file,
                     text(phrase("project or base detail; - reads a base detail from standard input"), locale))
        ->required();
    CLI::Option* csv = bill->add_flag("--csv", command.csv, text(phrase("for a spreadsheet, in in and lb"), locale));
    add_si(*bill, command.system, locale)->excludes(csv);
    add_language(*bill, locale);
    add_data(*bill, command.data, locale);
}

void add_letter(CLI::App& app, PaperCommand& command, const Locale& locale) {
    command.kind = paper::Kind::letter;
    CLI::App* letter = add_paper(app, command, "letter", phrase("write the remarks in a detail as a comment letter"),
                                 phrase("PDF to write, else FILE-comments.pdf here"), locale,
                                 phrase("base detail or project; - reads a base detail from standard input"));
    add_plugins(*letter, command.plugins, locale);
}

}  // namespace toehold::cli
