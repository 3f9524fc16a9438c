// Options of the commands that write a paper.
#include "cli/command_options.h"
#include "cli/option_pieces.h"

#include <CLI/CLI.hpp>

#include <map>

namespace toehold::cli {
namespace {

CLI::App* add_paper(CLI::App& app, PaperCommand& command, paper::Kind kind, const char* name, const char* help,
                    const char* output_help) {
    command.kind = kind;
    CLI::App* made = app.add_subcommand(name, help);
    made->add_option("FILE", command.file, "base detail; - reads standard input")->required();
    add_paper_wishes(*made, command.wishes, output_help);
    add_si(*made, command.wishes.system);
    add_data(*made, command.data);
    return made;
}

}  // namespace

void add_report(CLI::App& app, PaperCommand& command) {
    CLI::App* report =
        add_paper(app, command, paper::Kind::report, "report", "write the calculation of a base detail as PDF",
                  "PDF to write, else FILE-report.pdf here");
    add_plugins(*report, command.plugins);
}

void add_draw(CLI::App& app, PaperCommand& command) {
    CLI::App* draw = add_paper(app, command, paper::Kind::shop_drawing, "draw",
                               "draw the plate for the shop, or one view of the detail",
                               "file to write, .pdf, .svg, .png or .dxf, else FILE-plate.pdf here");
    const std::map<std::string, paper::Kind> views = {{"shop", paper::Kind::shop_drawing},
                                                      {"plan", paper::Kind::plan},
                                                      {"section", paper::Kind::section},
                                                      {"elevation", paper::Kind::elevation}};
    draw->add_option("--view", command.kind, "the shop drawing (.dxf: the plate to be cut), or one view of the detail")
        ->type_name("shop|plan|section|elevation")
        ->transform(CLI::CheckedTransformer(views, CLI::ignore_case).description(""));
}

void add_site(CLI::App& app, PaperCommand& command) {
    CLI::App* site = add_paper(app, command, paper::Kind::site_sheet, "site",
                               "write one page for whoever builds what is under the boards",
                               "file to write, .pdf, .svg or .png, else FILE-site.pdf here");
    add_plugins(*site, command.plugins);
}

void add_letter(CLI::App& app, PaperCommand& command) {
    CLI::App* letter =
        add_paper(app, command, paper::Kind::letter, "letter", "write the remarks a detail keeps as a comment letter",
                  "PDF to write, else FILE-comments.pdf here");
    add_plugins(*letter, command.plugins);
}

}  // namespace toehold::cli
