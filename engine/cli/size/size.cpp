#include "cli/commands.h"
#include "cli/console.h"
#include "cli/progress.h"
#include "cli/review_file.h"
#include "cli/size/input.h"
#include "cli/size/interruption.h"
#include "cli/size/worker.h"
#include "export/json/search_json.h"
#include "export/text/search_text.h"
#include "search/run/journal.h"
#include "search/run/run.h"
#include "wording/search.h"
#include "xml/detail/detail_file.h"
#include "xml/document/file.h"

#include <algorithm>
#include <filesystem>
#include <system_error>

namespace toehold::cli {
namespace {

namespace fs = std::filesystem;

using format::Locale;
using format::phrase;
using search::Outcome;

search::RunOptions options_of(const SizeCommand& command, const SizeInput& input) {
    search::RunOptions options;
    options.jobs = command.jobs;
    options.journal = command.journal;
    options.resume = command.resume;
    options.context = input.context;
    options.most_misplaced = command.top;
    return options;
}

/// Until it is done, or somebody presses Ctrl-C.
Outcome searched(const SizeCommand& command, const SizeInput& input, const Locale& locale) {
    Interruption interruption;
    Progress shown(locale, 2);
    search::RunOptions options = options_of(command, input);
    options.stop = [] { return Interruption::asked_for(); };
    options.progress = [&](const search::Progress& progress) { shown.show(wording::search_progress(progress)); };
    return search::run(input.space, input.catalog, options);
}

/// `porch-1234.xml`: after the file it comes from and the candidate's number.
fs::path file_of(const SizeCommand& command, search::Candidate candidate) {
    const std::string stem = command.file == standard_input ? "detail" : fs::path(command.file).stem().string();
    return fs::path(command.folder) / (stem + "-" + std::to_string(candidate) + ".xml");
}

/// What is shown, as files; false, with the reason said, where one cannot be written.
bool write_details(const SizeCommand& command, const Outcome& outcome, const Locale& locale) {
    if (command.folder.empty()) return true;
    std::error_code failed;
    fs::create_directories(command.folder, failed);
    if (failed) {
        complain(phrase("{}: the folder cannot be made: {}", command.folder, failed.message()), locale);
        return false;
    }
    for (std::size_t place = 0; place < std::min(command.top, outcome.front.size()); ++place) {
        const search::Result& result = outcome.front[place];
        const auto refused = xml::save_atomically(file_of(command, result.candidate), xml::write_detail(result.detail));
        if (!refused) continue;
        complain(model::Problems{*refused}, locale);
        return false;
    }
    return true;
}

void say_how_to_go_on(const SizeCommand& command, const Outcome& outcome, const Locale& locale) {
    if (!outcome.stopped || command.work != SizeWork::search) return;
    complain(command.journal.empty() ? phrase("stopped; with --journal FILE the search could go on where it stopped")
                                     : phrase("stopped; the same command with --resume goes on where it stopped"),
             locale);
}

ExitStatus show(const SizeCommand& command, const SizeInput& input, const Outcome& outcome, const Locale& locale) {
    const std::string& currency = input.catalog.prices.currency;
    print(command.json
              ? exporting::search_json(name_of(command.file), search::name_of(input.space, input.context), input.space,
                                       outcome, currency)
              : exporting::search_text(name_of(command.file), input.space, outcome, {locale, command.top, currency}));
    say_how_to_go_on(command, outcome, locale);
    if (!write_details(command, outcome, locale)) return ExitStatus::internal_fault;
    if (outcome.stopped) return ExitStatus::stopped;
    return outcome.holding.empty() ? ExitStatus::not_adequate : ExitStatus::adequate;
}

ExitStatus run_work(const SizeCommand& command, const SizeInput& input, const Locale& locale) {
    switch (command.work) {
        case SizeWork::list:
            return list_candidates(input);
        case SizeWork::judge:
            return judge_candidates(input, locale);
        case SizeWork::gather: {
            const search::Judged judged = gathered(input);
            return show(command, input,
                        search::conclude(input.space, input.catalog, judged, options_of(command, input)), locale);
        }
        case SizeWork::search:
            break;
    }
    return show(command, input, searched(command, input, locale), locale);
}

}  // namespace

ExitStatus run(const SizeCommand& command, const Locale& spoken) {
    const Locale locale{command.system, spoken.catalogue};
    if (command.file == standard_input && command.work != SizeWork::search && command.work != SizeWork::list) {
        complain(phrase("standard input holds the candidates or lines; name the detail's file"), locale);
        return ExitStatus::unusable_input;
    }
    const std::optional<SizeInput> input = size_input(command, locale);
    if (!input) return ExitStatus::unusable_input;
    try {
        return run_work(command, *input, locale);
    } catch (const search::JournalError& error) {
        complain(error.why, locale);
        return ExitStatus::unusable_input;
    }
}

}  // namespace toehold::cli
