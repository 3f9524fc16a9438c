// Reviews of base details and projects, one after the other or several at a time. Ctrl-C leaves what was reviewed.
#include "checks/registry.h"
#include "cli/check/forms.h"
#include "cli/check/kept_by_jobs.h"
#include "cli/check/outcome.h"
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/inputs.h"
#include "cli/ordered_parallel_map.h"
#include "cli/plugins.h"
#include "cli/progress.h"
#include "cli/size/interruption.h"
#include "search/run/parallel.h"

#include <algorithm>
#include <utility>

namespace toehold::cli {
namespace {

using format::Locale;
using format::phrase;

/// Prints the outcomes as their turns come, and keeps what the end needs.
class Printer {
  public:
    Printer(const Form& form, const Locale& locale) : form_(form), locale_(locale), before_(form.before) {}

    void take(Outcome outcome) {
        complain(outcome.problems, locale_);
        if (!outcome.fault.empty()) {
            complain(phrase("{}: program fault, not a fault of the detail: {}", outcome.row.file, outcome.fault),
                     locale_);
        }
        if (!form_.summary && outcome.row.begun) {
            if (outcome.row.headline) add(outcome.text);
            if (!outcome.row.headline && form_.unusable_text)
                add(form_.unusable_text(outcome.row.file, outcome.problems));
        }
        status_ = worse(status_, outcome.status);
        rows_.push_back(std::move(outcome.row));
    }

    /// What comes last, and the status of all.
    [[nodiscard]] ExitStatus finish() {
        const auto left = std::count_if(rows_.begin(), rows_.end(), [](const SummaryRow& row) { return !row.begun; });
        if (left > 0 && form_.stopped_text) add(form_.stopped_text(rows_));
        if (before_ == form_.before) print(form_.before);  // none could be printed
        print(form_.summary ? form_.summary(rows_) : form_.after);
        if (left > 0) {
            complain(phrase("stopped: {} of {} reviewed, {} not reviewed",
                            rows_.size() - static_cast<std::size_t>(left), rows_.size(), left),
                     locale_);
        }
        return status_;
    }

  private:
    void add(const std::string& text) {
        print(before_);
        print(text);
        before_ = form_.between;
    }

    const Form& form_;
    const Locale& locale_;
    std::string_view before_;
    std::vector<SummaryRow> rows_;
    ExitStatus status_ = ExitStatus::adequate;
};

ExitStatus review_all(const std::vector<std::string>& files, const catalog::Catalog& catalog, const Form& form,
                      std::size_t jobs, const Locale& locale) {
    Printer printer(form, locale);
    Progress progress(locale, files.size());
    // With one file there is nothing to keep of what was done: Ctrl-C ends the program as it always does.
    std::optional<Interruption> interruption;
    if (files.size() > 1) interruption.emplace();
    KeptByJobs kept;
    const auto work = [&](std::size_t index) {
        if (interruption && Interruption::asked_for()) return not_begun(files[index]);
        return kept.with([&](demand::Kept& own) { return outcome_of(files[index], catalog, form, own); });
    };
    const auto take = [&](std::size_t index, Outcome outcome) {
        progress.clear();
        const bool begun = outcome.row.begun;
        printer.take(std::move(outcome));
        if (begun) progress.show(index + 1);
    };
    ordered_parallel_map(files.size(), search::threads_for(files.size(), jobs), work, take);
    progress.clear();
    return printer.finish();
}

bool is_check(const std::string& id) {
    const auto& all = checks::registered_checks();
    return std::any_of(all.begin(), all.end(), [&id](const checks::Check& check) { return check.id == id; });
}

}  // namespace

ExitStatus run(const CheckCommand& command, const Locale& spoken) {
    const Locale locale{command.system, spoken.catalogue};
    if (!load_plugins(command.plugins, locale)) return ExitStatus::unusable_input;
    if (!command.explain.empty() && command.explain != every_check && !is_check(command.explain)) {
        complain(phrase("there is no check \"{}\"; toehold list checks names them", command.explain), locale);
        return ExitStatus::unusable_input;
    }
    const auto inputs = find_inputs(command.files, locale);
    if (!inputs) return ExitStatus::unusable_input;
    const Form form = form_of(command, inputs->several, locale);
    if (form.summary && (command.all_rows || command.system != units::System::us)) {
        complain(phrase("--all and --si need whole reviews; several files give a summary, or every review with --full"),
                 locale);
        return ExitStatus::unusable_input;
    }
    const auto catalog = load_catalog(command.data, locale);
    if (!catalog) return ExitStatus::unusable_input;
    return review_all(inputs->files, *catalog, form, command.jobs, locale);
}

}  // namespace toehold::cli
