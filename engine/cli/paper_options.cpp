// Options of the commands that write a paper.
#include "cli/command_options.h"
#include "cli/option_pieces.h"

#include <CLI/CLI.hpp>

#include <map>

namespace toehold::cli {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;
using format::text;

CLI::App* add_paper(CLI::App& app, PaperCommand& command, const char* name, const Phrase& help,
                    const Phrase& output_help, const Locale& locale) {
    CLI::App* made = app.add_subcommand(name, text(help, locale));
    made->add_option("FILE", command.file, text(phrase("base detail; - reads standard input"), locale))->required();
    add_paper_wishes(*made, command.wishes, output_help, locale);
    add_si(*made, command.wishes.system, locale);
    add_language(*made, locale);
    add_data(*made, command.data, locale);
    return made;
}

}  // namespace

void add_report(CLI::App& app, PaperCommand& command, const Locale& locale) {
    command.kind = paper::Kind::report;
    CLI::App* report = add_paper(app, command, "report", phrase("write the calculation of a base detail as PDF"),
                                 phrase("PDF to write, else FILE-report.pdf here"), locale);
    add_plugins(*report, command.plugins, locale);
}

void add_draw(CLI::App& app, PaperCommand& command, const Locale& locale) {
    command.kind = paper::Kind::shop_drawing;
    CLI::App* draw = add_paper(app, command, "draw", phrase("draw the plate for the shop, or one view of the detail"),
                               phrase("file to write, .pdf, .svg, .png or .dxf, else FILE-plate.pdf here"), locale);
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
    CLI::App* site = add_paper(app, command, "site", phrase("write one page for whoever builds under the deck boards"),
                               phrase("file to write, .pdf, .svg or .png, else FILE-site.pdf here"), locale);
    add_plugins(*site, command.plugins, locale);
}

void add_letter(CLI::App& app, PaperCommand& command, const Locale& locale) {
    command.kind = paper::Kind::letter;
    CLI::App* letter = add_paper(app, command, "letter", phrase("write the remarks in a detail as a comment letter"),
                                 phrase("PDF to write, else FILE-comments.pdf here"), locale);
    add_plugins(*letter, command.plugins, locale);
}

}  // namespace toehold::cli
