// The command that charts how a detail's ratios change with its inputs.
#include "cli/chart/command.h"
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/opened_detail.h"
#include "cli/progress.h"
#include "export/text/study_text.h"
#include "paper/charts/chart_sheet.h"

#include <algorithm>
#include <optional>

namespace toehold::cli {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;

/// What is wrong with the command line itself; empty: nothing.
Phrase whats_wrong(const ChartCommand& command) {
    const std::size_t fields = command.fields.size();
    const bool output = !command.wishes.output.empty();
    if (command.tornado && fields > 0) return phrase("--tornado takes every input by itself; leave out --field");
    if (command.map && fields != 0 && fields != 2)
        return phrase("--map takes no --field, or two: the one across and the one up");
    if (!command.map && fields > 1) return phrase("a chart runs over one --field, or over two with --map");
    if (!command.map && !command.tornado && fields == 0 && output)
        return phrase("say what to chart: --field FIELD, --tornado or --map");
    if (!output) return {};
    const std::vector<std::string> endings = paper::chart_endings();
    if (std::find(endings.begin(), endings.end(), ending_of(command.wishes.output)) != endings.end()) return {};
    return phrase("a chart is written as .svg, .pdf, .png or .csv, not as \"{}\"", command.wishes.output);
}

/// Reads each `--field`; absent, with the reason said, where one is wrong.
std::optional<std::vector<study::Asked>> asked_for(const ChartCommand& command, const std::vector<study::Field>& fields,
                                                   const Locale& locale) {
    std::vector<study::Asked> all;
    for (const std::string& text : command.fields) {
        study::ValuesRead read = study::read_values(fields, text);
        if (!read.asked) {
            complain(phrase("--field: {}", read.refusal), locale);
            return std::nullopt;
        }
        all.push_back(std::move(*read.asked));
    }
    if (all.size() == 2 && all[0].field.id == all[1].field.id) {
        complain(phrase("--map takes two different fields, not {} twice", all[0].field.id), locale);
        return std::nullopt;
    }
    return all;
}

/// Shows how far it is, anew for each stage.
class Watch {
  public:
    explicit Watch(Locale locale) : locale_(std::move(locale)) {}
    void operator()(std::size_t done, std::size_t all) {
        if (all != all_) shown_.emplace(locale_, all_ = all);
        shown_->show(done);
    }

  private:
    Locale locale_;
    std::size_t all_ = 0;
    std::optional<Progress> shown_;
};

study::AnyStudy studied(const ChartCommand& command, const study::Subject& subject,
                        const std::vector<study::Asked>& asked, const std::vector<study::Field>& fields,
                        const Locale& locale) {
    Watch watch(locale);
    const study::Run run{command.jobs, nullptr, [&watch](std::size_t done, std::size_t all) { watch(done, all); }};
    if (command.tornado) return study::tornado(subject, run);
    if (!command.map) return study::sweep(subject, asked.front().field, asked.front().values, run);
    if (asked.size() == 2) return study::holding_map(subject, asked[0], asked[1], run);
    const study::MapAsked customary = study::customary_map(fields);
    return study::holding_map(subject, customary.across, customary.up, run);
}

std::string text_of(const study::AnyStudy& study, const Locale& locale) {
    if (const auto* const sweep = std::get_if<study::Sweep>(&study)) return exporting::sweep_text(*sweep, locale);
    if (const auto* const tornado = std::get_if<study::Tornado>(&study))
        return exporting::tornado_text(*tornado, locale);
    return exporting::map_text(std::get<study::HoldingMap>(study), locale);
}

}  // namespace

ExitStatus run(const ChartCommand& command, const Locale& spoken) {
    const Locale locale{command.wishes.system, spoken.catalogue};
    if (const Phrase wrong = whats_wrong(command); !wrong.empty()) {
        complain(wrong, locale);
        return ExitStatus::unusable_input;
    }
    const std::optional<OpenedDetail> opened = open_detail(command.file, command.data, command.plugins, locale);
    if (!opened) return ExitStatus::unusable_input;
    const study::Subject subject{opened->resolved, opened->catalog};
    const std::vector<study::Field> fields = study::fields(subject);
    if (command.fields.empty() && !command.tornado && !command.map) {
        print(exporting::fields_text(fields, locale));
        return ExitStatus::adequate;
    }
    const std::optional<std::vector<study::Asked>> asked = asked_for(command, fields, locale);
    if (!asked) return ExitStatus::unusable_input;
    const study::AnyStudy study = studied(command, subject, *asked, fields, locale);
    if (command.wishes.output.empty()) {
        print(text_of(study, locale));
        return ExitStatus::adequate;
    }
    const std::string bytes =
        paper::chart_file(study, ending_of(command.wishes.output), {opened->resolved, opened->sha256},
                          issue_of(command.wishes, command.file, spoken));
    return write_paper(command.wishes.output, bytes, locale) ? ExitStatus::adequate : ExitStatus::internal_fault;
}

}  // namespace toehold::cli
