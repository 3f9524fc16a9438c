// Options of the command that charts a study.
#include "cli/chart/command.h"
#include "cli/command_options.h"
#include "cli/option_pieces.h"

#include <CLI/CLI.hpp>

namespace toehold::cli {

using format::Locale;
using format::Phrase;
using format::phrase;

void add_chart(CLI::App& app, ChartCommand& command, const Locale& locale) {
    const auto said = [&locale](const Phrase& words) { return format::text(words, locale); };
    CLI::App* chart = app.add_subcommand(
        "chart", said(phrase("chart how the ratios of a base detail change with its inputs, or list those")));
    chart->add_option("FILE", command.file, said(phrase("base detail; alone: its inputs are listed")))->required();
    chart
        ->add_option("--field", command.fields,
                     said(phrase("every check over this input, such as height=30..48/2, anchor-size=3/8..5/8 or "
                                 "height; of --map, twice: across and up")))
        ->type_name("FIELD[=RANGE]")
        ->allow_extra_args(false);
    CLI::Option* tornado = chart->add_flag(
        "--tornado", command.tornado, said(phrase("which input moves the governing ratio most, by a small change")));
    chart
        ->add_flag("--map", command.map,
                   said(phrase("what holds over tributary length of rail and guard height, or two fields")))
        ->excludes(tornado);
    add_paper_wishes(*chart, command.wishes,
                     phrase("file to write, .svg, .pdf, .png or .csv, instead of printing a table"), locale);
    add_si(*chart, command.wishes.system, locale);
    chart->add_option("--jobs", command.jobs, said(phrase("reviews at the same time; default: every core")))
        ->type_name("N")
        ->check(CLI::Range(1, 1024).description(""));
    add_language(*chart, locale);
    add_data(*chart, command.data, locale);
    add_plugins(*chart, command.plugins, locale);
}

}  // namespace toehold::cli
