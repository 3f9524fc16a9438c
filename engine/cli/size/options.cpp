// Options of `size`.
#include "cli/command_options.h"
#include "cli/option_pieces.h"

#include <CLI/CLI.hpp>

namespace toehold::cli {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;
using format::text;

/// An option whose only value is `-`, for what is read from standard input.
CLI::Option* add_input(CLI::App& size, SizeCommand& command, const char* name, SizeWork work, const Phrase& help,
                       const Locale& locale) {
    return size
        .add_option_function<std::string>(
            name, [&command, work](const std::string&) { command.work = work; }, text(help, locale))
        ->type_name("-")
        ->check(CLI::IsMember({"-"}).description(""));
}

void add_work(CLI::App& size, SizeCommand& command, const Locale& locale) {
    CLI::Option* list = size.add_flag_callback(
        "--list", [&command] { command.work = SizeWork::list; },
        text(phrase("print the numbers of all candidates, and judge none"), locale));
    CLI::Option* judge = add_input(size, command, "--candidates", SizeWork::judge,
                                   phrase("worker: judge the candidates whose numbers stand on standard input, one a "
                                          "line, and print a JSON line for each"),
                                   locale);
    CLI::Option* gather = add_input(size, command, "--gather", SizeWork::gather,
                                    phrase("show what came of workers' lines, read from standard input"), locale);
    list->excludes(judge, gather);
    judge->excludes(gather);
    CLI::Option* journal = size.add_option("--journal", command.journal,
                                           text(phrase("file that keeps every judgement, so that the search can go on "
                                                       "after it was stopped"),
                                                locale))
                               ->type_name("FILE")
                               ->excludes(list, judge, gather);
    size.add_flag("--resume", command.resume, text(phrase("go on where the journal ends"), locale))->needs(journal);
}

}  // namespace

void add_size(CLI::App& app, SizeCommand& command, const Locale& locale) {
    const auto said = [&locale](const Phrase& words) { return text(words, locale); };
    CLI::App* size = app.add_subcommand(
        "size", said(phrase("find the plates, anchors and blocking that hold, and the least of them")));
    size->add_option("FILE", command.file, said(phrase("base detail to start from; - reads standard input")))
        ->required();
    size->add_option(
            "--vary", command.vary,
            said(phrase("values to try, such as plate=5x5..8x8/1; keys: plate, thickness, metal, anchor, "
                        "length, pattern, washer, backing, blocks, block-size, ends; of a post on a member's "
                        "side plies, behind, next-joist, rim-ends, post-size, notch, bottom, bracket, anchor, "
                        "length, heights, head, backing, ties, ends; repeatable; without any, what a shop would try")))
        ->type_name("KEY=VALUES")
        ->allow_extra_args(false);
    add_work(*size, command, locale);
    size->add_option("--jobs", command.jobs, said(phrase("candidates judged at the same time; default: every core")))
        ->type_name("N")
        ->check(CLI::Range(1, 1024).description(""))
        ->excludes("--list", "--candidates");
    size->add_option("--top", command.top, said(phrase("results to show; default: 10")))
        ->type_name("N")
        ->check(CLI::PositiveNumber.description(""));
    CLI::Option* json =
        size->add_flag("--json", command.json, said(phrase("print the outcome as JSON, schema toehold.search/1")));
    size->add_option("-o,--output", command.folder,
                     said(phrase("folder in which each result shown is written as a "
                                 "complete detail")))
        ->type_name("FOLDER");
    size->add_option("--prices", command.prices, said(phrase("price table, else the one in the data folder")))
        ->type_name("FILE");
    add_si(*size, command.system, locale)->excludes(json);
    add_language(*size, locale);
    add_data(*size, command.data, locale);
    add_plugins(*size, command.plugins, locale);
}

}  // namespace toehold::cli
